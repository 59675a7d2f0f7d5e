import { problem, ok, type Result } from '../base/result';
import { wireSizeText, type WireSize } from '../model/wire-size';
import type { CalcProblem } from './calc-problem';
import type { CalcSource } from './calculation';
import {
  AC_43_13_TABLE_11_9,
  EEE_INST_002,
  NEC_310_16,
  NEC_310_17,
  type AmpacityTable,
} from './data/ampacity-tables';

/** Tables by the name under which they are chosen. `entered-free-air`: a current read off a chart or a wire record. */
export const AMPACITY_TABLES = [
  'ac-43-13-table-11-9',
  'nec-310-17-free-air',
  'nec-310-16-raceway',
  'eee-inst-002',
  'mil-std-975',
  'entered-free-air',
] as const;
export type AmpacityTableId = (typeof AMPACITY_TABLES)[number];

/** The current of a table before any factor. */
export interface BaseCurrent {
  readonly currentA: number;
  /** Conductor temperature that the current is for, degrees C. */
  readonly limitC: number;
  readonly ambientC: number;
  readonly table: string;
  readonly conditions: string;
  readonly source: CalcSource;
}

const BY_RATING: Partial<Record<AmpacityTableId, AmpacityTable>> = {
  'ac-43-13-table-11-9': AC_43_13_TABLE_11_9,
  'nec-310-17-free-air': NEC_310_17,
  'nec-310-16-raceway': NEC_310_16,
};

/**
 * Base current of a size and temperature rating. A rating between two columns takes the lower one. Gauge tables answer for
 * gauges only: a metric size is not turned into one.
 */
export function baseCurrent(
  id: Exclude<AmpacityTableId, 'entered-free-air'>,
  size: WireSize,
  ratedC: number,
  wires: number,
): Result<BaseCurrent, CalcProblem> {
  const outside = (input: string, value: number | string, range: string): Result<BaseCurrent, CalcProblem> =>
    problem({ code: 'out-of-range', input, value, range });
  if (size.system !== 'awg') return outside('size', wireSizeText(size), 'the table is by AWG');
  const table = BY_RATING[id];
  if (!table) return eeeInst002(id === 'eee-inst-002', size, ratedC, wires);
  const row = table.rows.find((r) => r.gauge === size.gauge);
  if (!row) return outside('size', wireSizeText(size), `not in ${table.title}`);
  const column = table.ratingsC.findLastIndex((r, i) => r <= ratedC && row.currentsA[i] !== null);
  const limitC = table.ratingsC[column];
  if (limitC === undefined) return outside('ratedC', ratedC, `${table.title} has no column at or below it`);
  const verified = table.source.verified && !table.unverifiedRatingsC.includes(limitC);
  return ok({
    currentA: row.currentsA[column]!,
    limitC,
    ambientC: table.ambientC,
    table: table.title,
    conditions: table.conditions,
    source: { ...table.source, verified },
  });
}

function eeeInst002(
  byColumn: boolean,
  size: WireSize & { system: 'awg' },
  ratedC: number,
  wires: number,
): Result<BaseCurrent, CalcProblem> {
  const t = EEE_INST_002;
  const row = t.rows.find((r) => r.gauge === size.gauge);
  if (!row)
    return problem({
      code: 'out-of-range',
      input: 'size',
      value: wireSizeText(size),
      range: `not in ${t.title}`,
    });
  const rating = t.ratingFactors.find((f) => f.ratedC <= ratedC);
  if (!rating)
    return problem({
      code: 'out-of-range',
      input: 'ratedC',
      value: ratedC,
      range: 'rules start at 105 degC',
    });
  const tableA = byColumn && wires > 1 ? row.bundledA : row.singleA;
  return ok({
    currentA: tableA * rating.factor,
    limitC: rating.ratedC,
    ambientC: t.ambientC,
    table: `${t.title}, ${byColumn && wires > 1 ? 'bundled' : 'single'} wire`,
    conditions:
      rating.factor === 1
        ? t.conditions
        : `${t.conditions}; x ${rating.factor} for ${rating.ratedC} degC wire`,
    source: t.source,
  });
}
