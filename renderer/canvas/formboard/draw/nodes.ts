import type { Point } from '@latchwork/core/base/point';
import { clamp, mono, rimmed, type Pen } from '../../draw/pen';
import type { BoardNode } from '@latchwork/core/derive/formboard/scene/board-items';

export const nodeRadiusPx = (s: number): number => clamp(1.5 * s, 3, 7);

export function paintNode(pen: Pen, { at }: BoardNode): void {
  const { ctx, look, s } = pen;
  ctx.beginPath();
  ctx.arc((at.x - pen.ox) * s, (at.y - pen.oy) * s, nodeRadiusPx(s), 0, 7);
  ctx.fillStyle = look.tokens.paper;
  ctx.fill();
  ctx.lineWidth = 1.5;
  ctx.strokeStyle = look.tokens.ink;
  ctx.stroke();
}

/** Names of nodes appear from this zoom on. */
const NAMES_PX_PER_MM = 0.55;

/** The name stands where neither a segment nor a connector is in its way. */
export function paintNodeName(pen: Pen, n: BoardNode, clearMm: number): void {
  if (pen.s < NAMES_PX_PER_MM) return;
  const { look, s } = pen;
  const size = clamp(2.8 * s, 9, 12);
  pen.ctx.fillStyle = look.tokens['ink-2'];
  nameBeside(pen, n.at, n.nameAngle, n.node.designator, mono(look, size), size, clearMm);
}

/** A name in a direction from a point, its box clear of a circle around that. */
export function nameBeside(
  pen: Pen,
  at: Point,
  angle: number,
  words: string,
  font: string,
  size: number,
  clearMm: number,
): void {
  const { ctx, s } = pen;
  ctx.font = font;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const half = ctx.measureText(words).width / 2;
  // Between two trunks their edges meet outside of the circle.
  const off = Math.max(nodeRadiusPx(s), clearMm * s * 0.68) + 4;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  rimmed(
    pen,
    words,
    pen.x(at.x) + ux * (off + half * Math.abs(ux)),
    pen.y(at.y) + uy * (off + size * 0.4 * Math.abs(uy)),
  );
}
