import { distance, type Point } from '@latchwork/core/base/point';
import type { Pen } from '../../draw/pen';

/** Begins a path on the canvas through points of the board. */
export function trace({ ctx, s, ox, oy }: Pen, points: readonly Point[]): void {
  ctx.beginPath();
  extend(ctx, s, ox, oy, points);
}

/** Adds a line through points of the board to the path that was begun. */
export function extend(
  ctx: CanvasRenderingContext2D,
  s: number,
  ox: number,
  oy: number,
  points: readonly Point[],
): void {
  points.forEach((p, i) => {
    if (i === 0) ctx.moveTo((p.x - ox) * s, (p.y - oy) * s);
    else ctx.lineTo((p.x - ox) * s, (p.y - oy) * s);
  });
}

/** Calls back at every `stepMm` of a line, first half a step after its start; `t` is the share of the line behind. */
export function marksAlong(
  points: readonly Point[],
  stepMm: number,
  mark: (x: number, y: number, cos: number, sin: number) => void,
): void {
  let next = stepMm / 2;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const d = distance(a, b);
    if (d === 0) continue;
    const [cos, sin] = [(b.x - a.x) / d, (b.y - a.y) / d];
    for (; next <= d; next += stepMm) mark(a.x + cos * next, a.y + sin * next, cos, sin);
    next -= d;
  }
}

/** Runs with the canvas in pixels around a point of the board, turned by an angle. */
export function around(
  pen: Pen,
  at: Point,
  angle: number,
  draw: (ctx: CanvasRenderingContext2D) => void,
): void {
  const { ctx, s, ox, oy } = pen;
  ctx.save();
  ctx.translate((at.x - ox) * s, (at.y - oy) * s);
  ctx.rotate(angle);
  draw(ctx);
  ctx.restore();
}

/** The angle at which text along a line of this angle is not upside down. */
export const upright = (angle: number): number =>
  Math.cos(angle) < -0.01 || (Math.abs(Math.cos(angle)) <= 0.01 && Math.sin(angle) > 0)
    ? angle + Math.PI
    : angle;
