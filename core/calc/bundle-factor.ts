import { problem, ok, type Result } from '../base/result';
import type { Factor } from './ambient-correction';
import { NO_FACTOR } from './ambient-correction';
import type { CalcProblem } from './calc-problem';
import {
  BUNDLE_5088_FACTORS,
  BUNDLE_5088_LOADS,
  BUNDLE_5088_SOURCE,
  NEC_COUNT,
  NEC_COUNT_SOURCE,
} from './data/ampacity-factors';

/**
 * Factor of MIL-W-5088L / SAE AS50881 for a bundle of 1 to 19 wires, by the share of the bundle's total capacity in use
 * (not the share of loaded wires), linear between the columns of 20, 40, 60, 80 and 100 %. Below 20 % the 20 % column holds.
 */
export function bundleFactor5088(wires: number, loadPercent: number): Result<Factor, CalcProblem> {
  const row = BUNDLE_5088_FACTORS[wires - 1];
  if (!row)
    return problem({
      code: 'out-of-range',
      input: 'wires',
      value: wires,
      range: 'the bundle curve ends at 19 wires',
    });
  const loads = BUNDLE_5088_LOADS;
  const next = loads.findIndex((l) => loadPercent <= l);
  if (next < 0)
    return problem({
      code: 'out-of-range',
      input: 'loadPercent',
      value: loadPercent,
      range: 'a share is at most 100 %',
    });
  const share = next === 0 ? 1 : (loadPercent - loads[next - 1]!) / (loads[next]! - loads[next - 1]!);
  const factor = next === 0 ? row[0]! : row[next - 1]! + share * (row[next]! - row[next - 1]!);
  return ok({ factor, source: BUNDLE_5088_SOURCE, note: undefined });
}

/** NEC adjustment by the number of current-carrying conductors. */
export function countFactorNec(wires: number): Factor {
  const step = NEC_COUNT.findLast((s) => wires >= s.from)!;
  return step.percent === 100
    ? NO_FACTOR
    : { factor: step.percent / 100, source: NEC_COUNT_SOURCE, note: undefined };
}

/** MIL-STD-975: (29 - N)/28 for up to 15 wires, one half above; the branches meet at 15. Formula from memory. */
export function bundleFactor975(wires: number): Factor {
  if (wires <= 1) return NO_FACTOR;
  return {
    factor: wires <= 15 ? (29 - wires) / 28 : 0.5,
    source: { title: 'MIL-STD-975 bundle formula: (29 - N)/28 up to 15 wires, then 0.5', verified: false },
    note: undefined,
  };
}
