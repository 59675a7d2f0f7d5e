import { boxesMeet } from '@latchwork/core/base/point';
import { SPLICE_RADIUS_MM } from '../scene/mouths';
import type { SpliceItem, WireItem } from '../scene/items';
import { clamp, mono, type Pen } from './pen';

/** Splices are dots with their designator. */
export function paintSplices(pen: Pen, splices: readonly SpliceItem[], skip: ReadonlySet<string>): void {
  for (const s of splices) if (!skip.has(s.id) && boxesMeet(s, pen.view)) paintSplice(pen, s);
}

export function paintSplice(pen: Pen, { splice }: SpliceItem, dx = 0, dy = 0): void {
  const { ctx, s, look } = pen;
  const [x, y] = [pen.x(splice.position.x + dx), pen.y(splice.position.y + dy)];
  const r = clamp(SPLICE_RADIUS_MM * s, 2.5, 12);
  ctx.beginPath();
  ctx.arc(x, y, r, 0, 7);
  ctx.fillStyle = look.tokens.ink;
  ctx.fill();
  ctx.lineWidth = 1.5;
  ctx.strokeStyle = look.tokens.paper;
  ctx.stroke();
  const size = clamp(3 * s, 9, 14);
  ctx.font = mono(look, size, 600);
  ctx.textAlign = 'center';
  ctx.textBaseline = 'alphabetic';
  ctx.fillText(splice.designator, x, y - r - 4);
}

/** Ends in the open: a small ring, so that they are seen and can be taken hold of. */
export function paintFreeEnds(pen: Pen, wires: readonly WireItem[], skip: ReadonlySet<string>): void {
  const { ctx, s, look } = pen;
  if (pen.hasty) return;
  ctx.lineWidth = 1.2;
  ctx.strokeStyle = look.tokens.ink;
  ctx.fillStyle = look.tokens.paper;
  const r = clamp(0.9 * s, 2, 6);
  for (const w of wires)
    w.wire.wire.ends.forEach((end, i) => {
      const m = w.mouths[i as 0 | 1];
      if (end.at !== 'free' || skip.has(w.id) || !boxesMeet(w, pen.view)) return;
      ctx.beginPath();
      ctx.arc(pen.x(m.x), pen.y(m.y), r, 0, 7);
      ctx.fill();
      ctx.stroke();
    });
}
