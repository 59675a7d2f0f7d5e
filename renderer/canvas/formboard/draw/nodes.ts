import { clamp, mono, rimmed, type Pen } from '../../draw/pen';
import type { BoardNode } from '../scene/board-items';

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
  const { ctx, look, s } = pen;
  const size = clamp(2.8 * s, 9, 12);
  const [ux, uy] = [Math.cos(n.nameAngle), Math.sin(n.nameAngle)];
  const off = Math.max(nodeRadiusPx(s), clearMm * s * 0.5) + 4;
  ctx.font = mono(look, size);
  ctx.fillStyle = look.tokens['ink-2'];
  ctx.textAlign = ux > 0.3 ? 'left' : ux < -0.3 ? 'right' : 'center';
  ctx.textBaseline = 'middle';
  rimmed(pen, n.node.designator, pen.x(n.at.x) + ux * off, pen.y(n.at.y) + uy * (off + size * 0.3));
}
