import { distance, type Point } from '../../base/point';
import { drawnPath } from '../../calc/curve/drawn-path';
import { nearestOnPath } from '../../calc/curve/nearest-on-path';

/**
 * The line over a joint, from the first point before it to the last one behind it. The joint becomes a via point unless it
 * lies on the line anyway. Gives the points between the ends, and the drawn length, mm.
 */
export function joinedLine(
  before: readonly Point[],
  joint: Point,
  behind: readonly Point[],
  shape: 'straight' | 'curve',
): { readonly via: readonly Point[]; readonly lengthMm: number } {
  const past = [...before, ...behind];
  const through = [...before, joint, ...behind];
  const direct = drawnPath(past as [Point, ...Point[]], shape);
  const whole = drawnPath(through as [Point, ...Point[]], shape);
  const onIt =
    nearestOnPath(direct, joint).distanceMm < 1e-6 && Math.abs(direct.lengthMm - whole.lengthMm) < 1e-6;
  const points = onIt ? past : through;
  const apart = points.filter((p, i) => i === 0 || distance(p, points[i - 1]!) > 1e-9);
  return { via: apart.slice(1, -1), lengthMm: (onIt ? direct : whole).lengthMm };
}
