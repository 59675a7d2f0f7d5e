import type { Point } from '../../base/point';
import { cutCubic, type Cubic } from './cubic';
import { curveOf, type DrawnPath } from './drawn-path';

/** The path as straight runs that stay within `toleranceMm` of it, ends included: for hit tests and plain drawings. */
export function pathPoints(path: DrawnPath, toleranceMm: number): readonly Point[] {
  const out: Point[] = [path.start];
  for (const piece of path.pieces) {
    const curve = curveOf(piece);
    if (curve) flatten(curve, toleranceMm, out, 0);
    else out.push(piece.to);
  }
  return out;
}

function flatten(curve: Cubic, toleranceMm: number, out: Point[], depth: number): void {
  if (depth > 16 || isFlat(curve, toleranceMm)) {
    out.push(curve[3]);
    return;
  }
  for (const half of cutCubic(curve, 0.5)) flatten(half, toleranceMm, out, depth + 1);
}

/** A cubic stays within 3/4 of the larger distance of its control points from the evenly spaced ones of its chord. */
function isFlat([a, b, c, d]: Cubic, toleranceMm: number): boolean {
  const off = (p: Point, t: number): number =>
    Math.hypot(p.x - a.x - (d.x - a.x) * t, p.y - a.y - (d.y - a.y) * t);
  return 0.75 * Math.max(off(b, 1 / 3), off(c, 2 / 3)) <= toleranceMm;
}
