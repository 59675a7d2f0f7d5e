import { problem, ok, type Result } from '../base/result';
import { NO_FACTOR, type Factor } from './ambient-correction';
import type { CalcProblem } from './calc-problem';
import { ALTITUDE_POINTS, ALTITUDE_SOURCE } from './data/ampacity-factors';

/**
 * Factor on a free-air current for thinner air. Only two points of the curve are published in text (0 ft and 20 000 ft), so
 * any height in between takes the factor of the higher point; above the last one it must be entered.
 */
export function altitudeFactor(altitudeFt: number): Result<Factor, CalcProblem> {
  const point = ALTITUDE_POINTS.find((p) => altitudeFt <= p.altitudeFt);
  if (!point)
    return problem({
      code: 'out-of-range',
      input: 'altitudeFt',
      value: altitudeFt,
      range: `the curve is known up to ${ALTITUDE_POINTS.at(-1)!.altitudeFt} ft; enter altitudeFactor`,
    });
  if (point.factor === 1) return ok(NO_FACTOR);
  const exact = point.altitudeFt === altitudeFt;
  return ok({
    factor: point.factor,
    source: ALTITUDE_SOURCE,
    note: exact ? undefined : `factor of ${point.altitudeFt} ft taken for ${altitudeFt} ft`,
  });
}
