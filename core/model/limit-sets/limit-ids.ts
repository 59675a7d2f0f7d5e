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
  'ambient-temperature': { unit: 'degC', about: 'Highest air temperature around the harness in operation.' },
  'altitude': { unit: 'm', about: 'Greatest height above the sea in operation.' },
  'current-asked-from': { unit: 'A', about: 'Current above which contacts and wires are asked about; no contact or wire of a harness warms below it.' },
  'bundle-wires': { unit: '', about: 'Wires of a bundle that carry current, where the table of wire currents goes by their number.' },
  'bundle-load-share': { unit: '%', about: 'Share of what its wires may carry that a bundle carries, where the table goes by it.' },
  'current-density-max': { unit: 'A/mm2', about: 'Most current for the metal area of a wire whose size the table lacks; 0: such a wire cannot be verified.' },
  'contact-current-margin': { unit: '', about: 'Factor on the rated current of a contact, its conditions being met.' },
  'contact-rise-at-rated': { unit: 'K', about: 'Rise of a contact at its rated current, on which ratings are based.' },
  'contact-peak-factor': { unit: '', about: 'Most peak current of a contact, as a multiple of its rated current.' },
  'inrush-fuse-share': { unit: '', about: 'Most I2t of an inrush, as a share of the melting I2t of the fuse.' },
  'fuse-load-margin': { unit: '', about: 'Least rating of a fuse, as a multiple of its continuous load.' },
  'fuse-distance-max': { unit: 'mm', about: 'Most length of wire from a source that does not limit itself to the first fuse.' },
  'fault-temperature-max': { unit: 'degC', about: 'Conductor temperature that the insulation stands during a short circuit.' },
  'voltage-drop-max': { unit: '%', about: 'Most voltage lost out and back, as a share of the voltage of the source.' },
  'joint-resistance-assumed': { unit: 'mohm', about: 'Resistance taken for a contact, splice or fuse whose record states none.' },
  'parallel-share-factor': { unit: '', about: 'Factor on what parallel wires carry together, for each doubling of their number.' },
  'parallel-difference-max': { unit: '', about: 'Most that parallel wires differ in length or metal area, as a share of the larger.' },
  'voltage-asked-from': { unit: 'V', about: 'Voltage from which every part must state its rating, and creepage is asked about.' },
  'pollution-degree': { unit: '', about: 'Pollution degree at the connectors: 1, 2 or 3.' },
  'overvoltage-category': { unit: '', about: 'Overvoltage category of the supplies: 1, 2, 3 or 4.' },
  'test-matings': { unit: '', about: 'Matings that electrical test and inspection take of a connector before it is in use.' },
  'mate-force-max': { unit: 'N', about: 'Most force to mate a connector by hand; 0: not asked for.' },
  'cut-out-tolerance': { unit: 'mm', about: 'Most that a cut-out differs from the one that its connector is made for, plus and minus.' },
  'spares-to-25': { unit: '', about: 'Least spare ways of a connector of up to 25 ways; 0: not asked for.' },
  'spares-to-100': { unit: '', about: 'Least spare ways of a connector of 26 to 100 ways; 0: not asked for.' },
  'spares-above-100': { unit: '', about: 'Least spare ways of a connector of more than 100 ways; 0: not asked for.' },
  'labels-asked': { unit: '', about: 'Where labels are asked for: 1 at connectors, 2 at wire ends too; 0: only where others have one.' },
  'size-area-deviation': { unit: '', about: 'Share by which a metal area may differ from that of its size before another unit is suspected.' },
  'series-from': { unit: '', about: 'Build quantity from which offers, declarations, crimp specifications and tools are asked about; 0: never.' },
  'swap-reach-margin': { unit: 'mm', about: 'How far beyond its branch a free end is pulled, where it could be plugged in the wrong place.' },
  'hazardous-voltage': { unit: 'V', about: 'Voltage above which live pins may not be touched and wires keep apart from those of lower voltage.' },
  'orange-voltage-from': { unit: 'V', about: 'Voltage above which wires are orange, and others are not; 0: not asked for.' },
  'neutral-blue': { unit: '', about: 'Blue wires: 1: a neutral is blue; 2: and blue is nothing else; 0: not asked for.' },
  'earth-extra-length-min': { unit: 'mm', about: 'Least that a protective earth is longer than the wires that run with it from connector to connector.' },
  'pair-length-difference-max': { unit: 'mm', about: 'Most that the wires of a pair differ in length.' },
  'noise-gap-min': { unit: 'mm', about: 'Least gap between quiet and noisy wires that run side by side for longer; 0: a gap of any width does.' },
  'noise-together-max': { unit: 'mm', about: 'Most that quiet and noisy wires run side by side in a segment.' },
} as const satisfies Record<string, Meaning>; // prettier-ignore
export type LimitId = keyof typeof LIMIT_IDS;

/**
 * Questions that several published tables answer differently, so that the project says by which one it goes. Their names
 * are those of core/calc/data/pull-force.ts and core/calc/ampacity-base.ts.
 */
export const TABLE_IDS = {
  'pull-force': { about: 'Least pull-out force of a crimp by wire size.' },
  'ampacity': { about: 'Continuous current of a wire.' },
  'material-group': { about: 'Material group of connector bodies by tracking index, where creepage is asked about: I, II, IIIa or IIIb.' },
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
