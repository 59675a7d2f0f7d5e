import { distance, type Point } from '../../base/point';
import { cubicLengthMm, cubicPoint, type Cubic } from './cubic';
import { curveOf, type DrawnPath } from './drawn-path';

/** The place of a path that lies nearest to a point; the first of several. */
export interface Nearest {
  readonly atMm: number;
  readonly at: Point;
  readonly distanceMm: number;
}

export function nearestOnPath(path: DrawnPath, p: Point): Nearest {
  let best: Nearest = { atMm: 0, at: path.start, distanceMm: distance(path.start, p) };
  let before = 0;
  for (const piece of path.pieces) {
    const curve = curveOf(piece);
    const t = curve ? nearestParameter(curve, p) : nearestFraction(piece.from, piece.to, p);
    const at = curve ? cubicPoint(curve, t) : onLine(piece.from, piece.to, t);
    const distanceMm = distance(at, p);
    if (distanceMm < best.distanceMm) {
      const along = curve ? cubicLengthMm(curve, 0, t) : t * piece.lengthMm;
      best = { atMm: before + along, at, distanceMm };
    }
    before += piece.lengthMm;
  }
  return best;
}

const onLine = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

function nearestFraction(a: Point, b: Point, p: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  return Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)));
}

const SAMPLES = 24;

/** The distance has several valleys along a curve: the lowest sample shows which, thirds find its bottom. */
function nearestParameter(curve: Cubic, p: Point): number {
  const far = (t: number): number => distance(cubicPoint(curve, t), p);
  let lowest = 0;
  for (let i = 1; i <= SAMPLES; i++) if (far(i / SAMPLES) < far(lowest / SAMPLES)) lowest = i;
  let [a, b] = [Math.max(0, lowest - 1) / SAMPLES, Math.min(SAMPLES, lowest + 1) / SAMPLES];
  while (b - a > 1e-9) {
    const third = (b - a) / 3;
    if (far(a + third) <= far(b - third)) b -= third;
    else a += third;
  }
  return (a + b) / 2;
}
