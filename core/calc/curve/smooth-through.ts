import { distance, type Point } from '../../base/point';
import type { Cubic } from './cubic';

/**
 * A smooth curve through all points, as one cubic Bézier from each to the next: the centripetal Catmull–Rom curve
 * (Yuksel, Schaefer, Keyser, Computer-Aided Design 43, 2011: no cusps or loops within a piece). It leaves its ends in the
 * direction of the next point. No two points that follow each other may be the same.
 */
export function smoothThrough(points: readonly Point[]): readonly Cubic[] {
  return points.slice(1).map((q, i): Cubic => {
    const p = points[i]!;
    const before = points[i - 1] ?? mirrored(p, q);
    const after = points[i + 2] ?? mirrored(q, p);
    return [p, control(before, p, q), control(after, q, p), q];
  });
}

const mirrored = (centre: Point, p: Point): Point => ({ x: 2 * centre.x - p.x, y: 2 * centre.y - p.y });

/** The control point beside `at`, on the way from `before` to `next`. */
function control(before: Point, at: Point, next: Point): Point {
  const [d1, d2] = [distance(before, at), distance(at, next)];
  const [r1, r2] = [Math.sqrt(d1), Math.sqrt(d2)];
  const own = 2 * d1 + 3 * r1 * r2 + d2;
  const whole = 3 * r1 * (r1 + r2);
  const of = (k: 'x' | 'y'): number => (d1 * next[k] - d2 * before[k] + own * at[k]) / whole;
  return { x: of('x'), y: of('y') };
}
