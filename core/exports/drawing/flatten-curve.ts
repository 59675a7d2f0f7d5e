import type { Point } from '../../base/point';
import { cubicPoint } from '../../calc/curve/cubic';

/**
 * Points of a chain of cubic curves (a start, then two control points and an end for each) so that no straight run is
 * further than `toleranceMm` from it. The count of runs is the bound of Wang: n = sqrt(3/4 m / tolerance), with m the
 * largest second difference of the control points.
 */
export function flattenCurve(points: readonly Point[], toleranceMm: number): readonly Point[] {
  const out: Point[] = points.slice(0, 1);
  for (let i = 0; i + 3 < points.length; i += 3) {
    const [a, b, c, d] = points.slice(i, i + 4) as [Point, Point, Point, Point];
    const m = Math.max(
      Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y),
      Math.hypot(b.x - 2 * c.x + d.x, b.y - 2 * c.y + d.y),
    );
    const runs = Math.max(1, Math.ceil(Math.sqrt((0.75 * m) / toleranceMm)));
    for (let k = 1; k <= runs; k++) out.push(cubicPoint([a, b, c, d], k / runs));
  }
  return out;
}
