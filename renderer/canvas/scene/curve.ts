import type { Box, Point } from '@latchwork/core/base/point';

/**
 * A chain of cubic Bézier curves: the start point, then two control points and an end point for each curve
 * (sheet millimetres).
 */
export type Curve = Float64Array;

export const pieces = (c: Curve): number => (c.length - 2) / 6;

export function moveAlong(ctx: CanvasPath, c: Curve): void {
  ctx.moveTo(c[0] as number, c[1] as number);
  for (let i = 2; i < c.length; i += 6)
    ctx.bezierCurveTo(
      c[i] as number,
      c[i + 1] as number,
      c[i + 2] as number,
      c[i + 3] as number,
      c[i + 4] as number,
      c[i + 5] as number,
    );
}

/** A box that surely holds the curve: that of its control points. */
export function curveBox(c: Curve): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < c.length; i += 2) {
    const x = c[i] as number;
    const y = c[i + 1] as number;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** The point at a share of the pieces: 0 the start, 1 the end. */
export function pointOn(c: Curve, share: number): Point {
  const n = pieces(c);
  const k = Math.min(n - 1, Math.floor(share * n));
  return pieceAt(c, k, share * n - k);
}

function pieceAt(c: Curve, k: number, u: number): Point {
  const i = k * 6;
  const v = 1 - u;
  const [a, b, d, e] = [v * v * v, 3 * v * v * u, 3 * v * u * u, u * u * u];
  const at = (j: number): number =>
    a * (c[i + j] as number) +
    b * (c[i + 2 + j] as number) +
    d * (c[i + 4 + j] as number) +
    e * (c[i + 6 + j] as number);
  return { x: at(0), y: at(1) };
}

const CHORDS = 24;

/** Distance from a point to the curve, each piece taken as 24 chords (mm). */
export function distanceTo(c: Curve, p: Point): number {
  let best = Infinity;
  for (let k = 0; k < pieces(c); k++) {
    let from = pieceAt(c, k, 0);
    for (let t = 1; t <= CHORDS; t++) {
      const to = pieceAt(c, k, t / CHORDS);
      best = Math.min(best, distanceToChord(p, from, to));
      from = to;
    }
  }
  return best;
}

function distanceToChord(p: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length2));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}
