import type { Aql } from '../../calc/data/sampling';
import { samplingPlan } from '../../calc/sampling-plan';
import type { Characteristic, CharacteristicClass } from './characteristic';

/** Level II, and an acceptance quality limit by class: common practice, to be agreed for each order. */
export const INSPECTION_LEVEL = 'II';
export const AQL_BY_CLASS: Readonly<Record<Exclude<CharacteristicClass, 'critical'>, Aql>> = {
  major: '1.0',
  minor: '2.5',
};

export interface SamplingCells {
  readonly lot: number;
  readonly inspect: string;
  readonly sampleSize: number;
  readonly accept: number;
  readonly reject: number;
}

/** How many of the lot are looked at. A lot of one, and what is critical, is looked at whole. */
export function samplingOf(c: Characteristic, order: number): SamplingCells {
  const lot = c.perHarness * order;
  if (typeof c.sampling === 'object')
    return { lot, inspect: 'at each check', sampleSize: c.sampling.pieces, accept: 0, reject: 1 };
  const every = { lot, inspect: 'every item', sampleSize: lot, accept: 0, reject: 1 };
  if (c.sampling === 'every' || c.class === 'critical' || lot < 2) return every;
  const aql = AQL_BY_CLASS[c.class];
  const plan = samplingPlan.run({ lotSize: lot, level: INSPECTION_LEVEL, aql });
  if (!plan.ok || plan.value.inspection === 'every item') return every;
  const { sampleSize, accept, reject, planLetter } = plan.value;
  return { lot, inspect: `sample, letter ${planLetter}, AQL ${aql}`, sampleSize, accept, reject };
}
