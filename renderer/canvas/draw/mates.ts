import { boxesMeet } from '@latchwork/core/base/point';
import { moveAlong } from '../scene/curve';
import type { MateItem } from '../scene/items';
import { clamp, inMillimetres, type Pen } from './pen';

/** Two halves plugged together: a double line between the bodies that face each other. */
export function paintMates(pen: Pen, mates: readonly MateItem[], skip: ReadonlySet<string>): void {
  const inView = mates.filter((m) => !skip.has(m.id) && boxesMeet(m, pen.view));
  if (inView.length) inMillimetres(pen, (ctx) => inView.forEach((m) => strokeMate(ctx, m, pen)));
}

/** The outer stroke in ink, the inside laid open again in paper. A canvas in millimetres. */
export function strokeMate(ctx: CanvasRenderingContext2D, mate: MateItem, pen: Pen, colour?: string): void {
  const { s, look } = pen;
  const open = clamp(1.3 * s, 2, 9);
  const line = s < 1.2 ? 1 : 1.3;
  ctx.beginPath();
  moveAlong(ctx, mate.curve);
  ctx.lineWidth = (open + 2 * line) / s;
  ctx.strokeStyle = colour ?? look.tokens.ink;
  ctx.stroke();
  ctx.lineWidth = open / s;
  ctx.strokeStyle = look.tokens.paper;
  ctx.stroke();
}
