import { PART_KIND_NAMES, type Part } from '../model/parts/part';
import { wireSizeText, type WireSize } from '../model/wire-size';

/** How an alternate compares with the part it stands in for. */
export interface Substitution {
  /** What would be another thing, or less, with the alternate: in words. */
  readonly worse: readonly string[];
  /** Fields that the part states and the alternate does not. */
  readonly missing: readonly string[];
}

/** What a field of a part has to be in its alternate. */
type Demand = 'same' | 'no-less' | 'no-more' | 'all-of';

/**
 * Fields by which the rules judge a design. With `same` the alternate has the same value, with `no-less` and `no-more` one
 * that is at least as good, with `all-of` every entry of the list. A field that the part does not state asks for nothing.
 */
const MATING: Readonly<Record<string, Demand>> = {
  interface: 'same', bodyForm: 'same', contactKind: 'same', mounting: 'same', ways: 'same', rows: 'same', pitchMm: 'same',
  rowPitchMm: 'same', numbering: 'same', cavityOneCorner: 'same', keying: 'same', keyPositions: 'all-of',
  voltageMaxV: 'no-less', creepageMm: 'no-less', cycles: 'no-less', mateForceN: 'no-more', fingerRoomMm: 'no-more',
}; // prettier-ignore

const DEMANDS: { readonly [K in Part['kind']]?: Readonly<Record<string, Demand>> } = {
  housing: { ...MATING, acceptedSeries: 'all-of', wireOdMaxMm: 'no-less', datumMm: 'same', sealed: 'same' },
  header: {
    ...MATING, orientation: 'same', termination: 'same', finish: 'same', tailLengthMm: 'same', standOffMm: 'same',
    processes: 'all-of', reflowPeakMaxC: 'no-less', reflowTimeMaxS: 'no-less',
  }, // prettier-ignore
  contact: {
    series: 'same', contactKind: 'same', finish: 'same', areaMinMm2: 'no-more', areaMaxMm2: 'no-less',
    insulationMinMm: 'no-more', insulationMaxMm: 'no-less', stripLengthMm: 'same', currentMaxA: 'no-less',
    cycles: 'no-less', resistanceMohm: 'no-more',
  }, // prettier-ignore
  wire: {
    size: 'same', areaMm2: 'no-less', odMinMm: 'no-less', odMm: 'same', odMaxMm: 'no-more', voltageMaxV: 'no-less',
    resistanceOhmPerKm: 'no-more', bendFactor: 'no-more',
  }, // prettier-ignore
  cable: {
    odMm: 'no-more',
    voltageMaxV: 'no-less',
    shield: 'same',
    drainWire: 'same',
    bendFactor: 'no-more',
  },
  fuse: { ratedA: 'same', voltageMaxV: 'no-less', clearingA2s: 'no-more', meltingA2s: 'no-less' },
  'wire-seal': { odMinMm: 'no-more', odMaxMm: 'no-less' },
  splice: { areaMinMm2: 'no-more', areaMaxMm2: 'no-less', stripLengthMm: 'same', wiresMax: 'no-less' },
  covering: { form: 'same', innerMinMm: 'no-more', innerMaxMm: 'no-less', wallMm: 'no-more' },
  tie: { bundleMinMm: 'no-more', bundleMaxMm: 'no-less' },
};

/** Whether every check that the part passes would be passed with the alternate too, as far as records tell. */
export function substitution(part: Part, alternate: Part): Substitution {
  if (part.kind !== alternate.kind)
    return {
      worse: [`a ${PART_KIND_NAMES[alternate.kind]} for a ${PART_KIND_NAMES[part.kind]}`],
      missing: [],
    };
  const demands: Readonly<Record<string, Demand>> = { ...DEMANDS[part.kind], temperatureMaxC: 'no-less' };
  const worse: string[] = [];
  const missing: string[] = [];
  for (const [field, demand] of Object.entries(demands)) {
    const [was, is] = [valueOf(part, field), valueOf(alternate, field)];
    if (was === undefined) continue;
    if (is === undefined) missing.push(field);
    else if (!meets(demand, was, is)) worse.push(`${field} ${textOf(is)} for ${textOf(was)}`);
  }
  return { worse, missing };
}

const valueOf = (part: Part, field: string): unknown => (part as unknown as Record<string, unknown>)[field];

function meets(demand: Demand, was: unknown, is: unknown): boolean {
  if (demand === 'all-of') return Array.isArray(was) && Array.isArray(is) && was.every((v) => is.includes(v));
  if (demand === 'same') return textOf(was) === textOf(is);
  if (typeof was !== 'number' || typeof is !== 'number') return false;
  return demand === 'no-less' ? is >= was : is <= was;
}

function textOf(value: unknown): string {
  if (Array.isArray(value)) return value.map(textOf).join(' ') || 'none';
  if (typeof value === 'object' && value !== null) return wireSizeText(value as WireSize);
  return String(value);
}
