import { ok, problem, type Result } from '../base/result';
import { ampacity } from '../calc/ampacity';
import { AMPACITY_TABLES } from '../calc/ampacity-base';
import type { CalcProblem } from '../calc/calc-problem';
import { conductorArea } from '../calc/conductor-area';
import type { Conductor } from '../model/parts/wire';
import type { LimitSet } from '../model/limit-set';
import type { LimitId } from '../model/limit-sets/limit-ids';
import { wireSizeText } from '../model/wire-size';
import type { ResolvedWire } from './harness';

/** What a wire may carry for ever, by the table that the limit set names. */
export interface WireAmpacity {
  readonly currentA: number;
  /** The conductor temperature that the current brings it to, and the air around it, degrees C. */
  readonly ratedC: number;
  readonly ambientC: number;
  /** `density`: the table has no such size, and the limit on the current density stands in. */
  readonly basis: 'table' | 'density';
  /** Table, its conditions, its source. */
  readonly text: string;
  readonly verified: boolean;
}

const FT_PER_M = 1 / 0.3048;

const known = new WeakMap<LimitSet, WeakMap<Conductor, Result<WireAmpacity, CalcProblem>>>();

/** The ampacity of a wire; computed once for each conductor and limit set. What is missing is named. */
export function wireAmpacity(wire: ResolvedWire, set: LimitSet): Result<WireAmpacity, CalcProblem> {
  const { conductor } = wire;
  if (!conductor) return problem({ code: 'needs', inputs: [`part of wire ${wire.wire.designator}`] });
  let ofSet = known.get(set);
  if (!ofSet) known.set(set, (ofSet = new WeakMap()));
  let result = ofSet.get(conductor);
  if (!result) ofSet.set(conductor, (result = compute(conductor, wire, set)));
  return result;
}

/** The value of a limit, where the set has it. */
export const limitValue = (set: LimitSet, id: LimitId): number | undefined =>
  set.limits.find((l) => l.id === id)?.value;

function compute(
  conductor: Conductor,
  { part }: ResolvedWire,
  set: LimitSet,
): Result<WireAmpacity, CalcProblem> {
  const name = part?.partNumber ?? 'the wire';
  const named = set.tables?.find((t) => t.id === 'ampacity')?.table;
  const table = AMPACITY_TABLES.find((t) => t === named);
  const ratedC = part?.temperatureMaxC;
  const ambientC = limitValue(set, 'ambient-temperature');
  const missing = [
    ...(table ? [] : [`table ampacity of limit set ${set.name}`]),
    ...(ambientC === undefined ? [`limit ambient-temperature of limit set ${set.name}`] : []),
    ...(ratedC === undefined ? [`temperature rating of ${name}`] : []),
  ];
  if (!table || ratedC === undefined || ambientC === undefined)
    return problem({ code: 'needs', inputs: missing });
  const result = ampacity.run({
    table,
    size: conductor.size,
    ratedC,
    ambientC,
    wires: limitValue(set, 'bundle-wires') ?? 33,
    loadPercent: limitValue(set, 'bundle-load-share'),
    altitudeFt: (limitValue(set, 'altitude') ?? 0) * FT_PER_M,
  });
  if (result.ok) {
    const { currentA, limitC, conditions, working, table: title } = result.value;
    const sources = [...new Set(working.sources.map((s) => s.title))].join('; ');
    return ok({
      currentA,
      ratedC: limitC,
      ambientC,
      basis: 'table',
      text: `${title} (${conditions}), ${sources}`,
      verified: working.sources.every((s) => s.verified),
    });
  }
  const lacksSize = result.problem.code === 'out-of-range' && result.problem.input === 'size';
  const density = limitValue(set, 'current-density-max') ?? 0;
  const area = conductorArea.run({
    size: conductor.size,
    areaMm2: conductor.areaMm2,
    strands: conductor.stranding?.strands,
    strandDiameterMm: conductor.stranding?.strandDiameterMm,
  });
  if (!lacksSize || density === 0 || !area.ok) return result;
  return ok({
    currentA: density * area.value.areaMm2,
    ratedC,
    ambientC,
    basis: 'density',
    text: `estimate: the table has no ${wireSizeText(conductor.size)}, so ${density} A/mm2 of limit set ${set.name} x ${area.value.areaMm2} mm2`,
    verified: false,
  });
}
