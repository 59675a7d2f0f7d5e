import { z } from 'zod';
import { problem, ok, type Result } from '../base/result';
import { WireSize, wireSizeText } from '../model/wire-size';
import { altitudeFactor } from './altitude-factor';
import { ambientByTable, ambientWithoutCredit, NO_FACTOR, type Factor } from './ambient-correction';
import { AMPACITY_TABLES, baseCurrent, type BaseCurrent } from './ampacity-base';
import { bundleFactor5088, bundleFactor975, countFactorNec } from './bundle-factor';
import type { CalcProblem } from './calc-problem';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { NEC_AMBIENT_30, NEC_AMBIENT_SOURCE, NEC_COUNT_SOURCE } from './data/ampacity-factors';
import { AC_43_13_TABLE_11_9, EEE_INST_002, NEC_310_16, NEC_310_17 } from './data/ampacity-tables';

export interface Ampacity extends Answer {
  readonly currentA: number;
  readonly baseA: number;
  readonly ambientFactor: number;
  readonly altitudeFactor: number;
  readonly bundleFactor: number;
  /** Conductor temperature at that current, degrees C. */
  readonly limitC: number;
  readonly table: string;
  readonly conditions: string;
}

const inputs = z.strictObject({
  table: field(z.enum(AMPACITY_TABLES), 'Table'),
  size: field(WireSize, 'Wire size'),
  ratedC: field(z.number().min(40).max(300), 'Temperature rating of the wire', 'degC'),
  ambientC: field(z.number().min(-60).max(300), 'Ambient temperature', 'degC'),
  wires: field(z.int().positive(), 'Wires in the bundle that carry current'),
  loadPercent: field(z.number().min(0).max(100).optional(), 'Share of the bundle capacity in use', '%'),
  altitudeFt: field(z.number().min(0).default(0), 'Altitude', 'ft'),
  freeAirA: field(z.number().positive().optional(), 'Free-air current at this ambient (entered)', 'A'),
  bundleFactor: field(z.number().positive().max(1).optional(), 'Bundle factor read off a chart'),
  altitudeFactor: field(z.number().positive().max(1).optional(), 'Altitude factor read off a chart'),
});
type Input = z.output<typeof inputs>;

const ENTERED: CalcSource = { title: 'entered by the user', verified: true };

/**
 * Continuous current of a wire: table current x ambient factor x altitude factor x bundle factor, in that order. Which
 * corrections apply depends on the table: table 11-9 already holds for a large bundle at altitude and gives no credit for
 * less; the free-air current takes altitude and the bundle curve; NEC tables take their own ambient and count factors.
 */
export const ampacity = calculation<typeof inputs, Ampacity>({
  id: 'ampacity',
  title: 'Current of a wire in a bundle',
  about:
    'Published table, then ambient, altitude and bundle. The table and its conditions stand beside the number.',
  inputs,
  outputs: {
    currentA: { label: 'Continuous current', unit: 'A' },
    baseA: { label: 'Table current', unit: 'A' },
    ambientFactor: { label: 'Ambient factor', unit: '' },
    altitudeFactor: { label: 'Altitude factor', unit: '' },
    bundleFactor: { label: 'Bundle factor', unit: '' },
    limitC: { label: 'Conductor temperature at that current', unit: 'degC' },
    table: { label: 'Table', unit: '' },
    conditions: { label: 'Conditions', unit: '' },
  },
  sources: [
    AC_43_13_TABLE_11_9.source,
    NEC_310_17.source,
    NEC_310_16.source,
    EEE_INST_002.source,
    NEC_AMBIENT_SOURCE,
    NEC_COUNT_SOURCE,
  ],
  run(input) {
    const base = baseOf(input);
    if (!base.ok) return base;
    const ambient = ambientOf(input, base.value);
    if (!ambient.ok) return ambient;
    const altitude = altitudeOf(input);
    if (!altitude.ok) return altitude;
    const bundle = bundleOf(input);
    if (!bundle.ok) return bundle;
    const factors = [ambient.value, altitude.value, bundle.value];
    const { currentA: baseA, limitC, table, conditions, source } = base.value;
    return answer({
      currentA: factors.reduce((a, f) => a * f.factor, baseA),
      baseA,
      ambientFactor: ambient.value.factor,
      altitudeFactor: altitude.value.factor,
      bundleFactor: bundle.value.factor,
      limitC,
      table,
      conditions,
      working: {
        formula: 'I = I(table) x ambient x altitude x bundle',
        figures: [
          figure('Size', wireSizeText(input.size)),
          figure('Table current', baseA, 'A'),
          figure('Ambient factor', ambient.value.factor),
          figure('Altitude factor', altitude.value.factor),
          figure('Bundle factor', bundle.value.factor),
        ],
        sources: [source, ...factors.flatMap((f) => f.source ?? [])],
        notes: [conditions, ...factors.flatMap((f) => f.note ?? [])],
      },
    });
  },
});

function baseOf(input: Input): Result<BaseCurrent, CalcProblem> {
  if (input.table !== 'entered-free-air')
    return baseCurrent(input.table, input.size, input.ratedC, input.wires);
  if (input.freeAirA === undefined) return problem({ code: 'needs', inputs: ['freeAirA'] });
  return ok({
    currentA: input.freeAirA,
    limitC: input.ratedC,
    ambientC: input.ambientC,
    table: 'free-air current as entered',
    conditions: `one wire in free air, ${input.ambientC} degC ambient, ${input.ratedC} degC conductor, sea level`,
    source: ENTERED,
  });
}

function ambientOf(input: Input, base: BaseCurrent): Result<Factor, CalcProblem> {
  if (input.table !== 'nec-310-17-free-air' && input.table !== 'nec-310-16-raceway')
    return ok(ambientWithoutCredit(base.limitC, base.ambientC, input.ambientC));
  const factor = ambientByTable(NEC_AMBIENT_30, base.limitC, input.ambientC);
  const range = `no ambient factor for a ${base.limitC} degC conductor`;
  return factor
    ? ok(factor)
    : problem({ code: 'out-of-range', input: 'ambientC', value: input.ambientC, range });
}

function altitudeOf(input: Input): Result<Factor, CalcProblem> {
  if (input.altitudeFactor !== undefined)
    return ok({ factor: input.altitudeFactor, source: ENTERED, note: undefined });
  switch (input.table) {
    case 'entered-free-air':
      return altitudeFactor(input.altitudeFt);
    case 'ac-43-13-table-11-9':
      return input.altitudeFt <= 60_000
        ? ok(NO_FACTOR)
        : problem({
            code: 'out-of-range',
            input: 'altitudeFt',
            value: input.altitudeFt,
            range: 'the table ends at 60 000 ft',
          });
    default:
      return ok(NO_FACTOR);
  }
}

function bundleOf(input: Input): Result<Factor, CalcProblem> {
  if (input.bundleFactor !== undefined)
    return ok({ factor: input.bundleFactor, source: ENTERED, note: undefined });
  switch (input.table) {
    case 'ac-43-13-table-11-9':
      if (input.loadPercent === undefined) return problem({ code: 'needs', inputs: ['loadPercent'] });
      return input.loadPercent <= 20
        ? ok(NO_FACTOR)
        : problem({
            code: 'out-of-range',
            input: 'loadPercent',
            value: input.loadPercent,
            range: 'the table holds up to 20 %',
          });
    case 'entered-free-air':
      if (input.wires === 1) return ok(NO_FACTOR);
      if (input.loadPercent === undefined) return problem({ code: 'needs', inputs: ['loadPercent'] });
      return bundleFactor5088(input.wires, input.loadPercent);
    case 'nec-310-17-free-air':
    case 'nec-310-16-raceway':
      return ok(countFactorNec(input.wires));
    case 'mil-std-975':
      return ok(bundleFactor975(input.wires));
    case 'eee-inst-002':
      return ok(NO_FACTOR);
  }
}
