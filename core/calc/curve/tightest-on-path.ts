import { cubicCurvature, cubicLengthMm, cubicParameterAt, type Cubic } from './cubic';
import { curveOf, type DrawnPath } from './drawn-path';

/** The place where a path bends most, and the radius of the bend there (to the middle of the line), mm. */
export interface Tightest {
  readonly atMm: number;
  readonly radiusMm: number;
}

/** Of the curved pieces between two places on the path; undefined where none bends. Corners of straight runs have no radius. */
export function tightestOnPath(path: DrawnPath, fromMm = 0, toMm = path.lengthMm): Tightest | undefined {
  let best: Tightest | undefined;
  let before = 0;
  for (const piece of path.pieces) {
    const [low, high] = [Math.max(0, fromMm - before), Math.min(piece.lengthMm, toMm - before)];
    const curve = curveOf(piece);
    if (curve && high > low) {
      const t = tightestParameter(
        curve,
        cubicParameterAt(curve, low, piece.lengthMm),
        cubicParameterAt(curve, high, piece.lengthMm),
      );
      const radiusMm = 1 / Math.abs(cubicCurvature(curve, t));
      if (radiusMm < FLAT_MM && (!best || radiusMm < best.radiusMm))
        best = { atMm: before + cubicLengthMm(curve, 0, t), radiusMm };
    }
    before += piece.lengthMm;
  }
  return best;
}

/** A bend wider than this is straight: a kilometre. */
const FLAT_MM = 1e6;
const SAMPLES = 32;

function tightestParameter(curve: Cubic, from: number, to: number): number {
  const bend = (t: number): number => Math.abs(cubicCurvature(curve, t));
  const at = (i: number): number => from + ((to - from) * i) / SAMPLES;
  let most = 0;
  for (let i = 1; i <= SAMPLES; i++) if (bend(at(i)) > bend(at(most))) most = i;
  let [a, b] = [at(Math.max(0, most - 1)), at(Math.min(SAMPLES, most + 1))];
  while (b - a > 1e-9) {
    const third = (b - a) / 3;
    if (bend(a + third) >= bend(b - third)) b -= third;
    else a += third;
  }
  const found = (a + b) / 2;
  return bend(found) >= bend(at(most)) ? found : at(most);
}
