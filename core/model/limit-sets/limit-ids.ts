import type { Limit, LimitSet, TableChoice } from '../limit-set';

interface Meaning {
  readonly unit: string;
  /** What the number bounds, as one sentence. */
  readonly about: string;
}

/**
 * Every limit that a rule may ask for. The shipped sets give a value for each; a project may change them. Where zero
 * means "not asked for", the sentence says so.
 */
export const LIMIT_IDS = {
  'strip-length-tolerance': { unit: 'mm', about: 'Strip length, plus and minus, where the contact states none.' },
  'tail-protrusion-min': { unit: 'mm', about: 'Least length that a solder tail stands out of the board.' },
  'tail-protrusion-max': { unit: 'mm', about: 'Most length that a solder tail stands out of the board.' },
  'pitch-error-max': { unit: 'mm', about: 'Most that two unlike pitches add up to from the first way to the last.' },
  'bend-radius-factor': { unit: '', about: 'Least inside radius of a bend, in outside diameters of the bundle.' },
  'first-bend-straight': { unit: 'mm', about: 'Least straight length from the rear of a housing to the first bend or tie.' },
  'tie-spacing-max': { unit: 'mm', about: 'Most that a tied run lies bare from tie to tie.' },
  'untied-length-max': { unit: 'mm', about: 'Most that a run without any tie lies bare; 0: ties are not asked for.' },
  'service-loop-min': { unit: 'mm', about: 'Least service loop at a connector; 0: not asked for.' },
  'service-loop-reterminations': { unit: '', about: 'Times that the service loop lets a wire be crimped again; 0: not asked for.' },
  'cut-length-minus': { unit: 'mm', about: 'How much shorter than its length a wire may be cut.' },
  'length-slack-max': { unit: 'mm', about: 'Most that a wire is longer than its shortest way; 0: not asked for.' },
  'length-tolerance-share': { unit: '', about: 'Narrowest tolerance of a segment, as a share of the default tolerance of its length.' },
  'untwist-max': { unit: 'mm', about: 'Most length that a pair lies untwisted or out of its shield at an end.' },
  'untwist-max-quiet': { unit: 'mm', about: 'The same where a signal of the group is quiet, that is, sensitive.' },
} as const satisfies Record<string, Meaning>; // prettier-ignore
export type LimitId = keyof typeof LIMIT_IDS;

/** Questions that several published tables answer differently, so that the project says by which one it goes. */
export const TABLE_IDS = {
  'pull-force': { about: 'Least pull-out force of a crimp by wire size; the names are those of core/calc/data/pull-force.ts.' },
} as const satisfies Record<string, { readonly about: string }>; // prettier-ignore
export type TableId = keyof typeof TABLE_IDS;

type Value = Pick<Limit, 'value' | 'source' | 'edition' | 'verified'>;

/** A set with a value for every id; one that is forgotten does not compile. */
export const limitSetOf = (set: {
  readonly name: string;
  readonly revision: string;
  readonly limits: Readonly<Record<LimitId, Value>>;
  readonly tables: Readonly<Record<TableId, string>>;
}): LimitSet => ({
  name: set.name,
  revision: set.revision,
  limits: (Object.keys(LIMIT_IDS) as LimitId[]).map((id) => limitOf(id, set.limits[id])),
  tables: Object.entries(set.tables).map(([id, table]): TableChoice => ({ id, table })),
});

const limitOf = (id: LimitId, { value, source, edition, verified }: Value): Limit => ({
  id,
  value,
  unit: LIMIT_IDS[id].unit,
  source,
  ...(edition === undefined ? {} : { edition }),
  verified,
});
