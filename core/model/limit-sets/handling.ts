import type { Limit } from '../limit-set';

type Value = Pick<Limit, 'value' | 'source' | 'edition' | 'verified'>;

const practice = (value: number, source = 'common practice'): Value => ({ value, source, verified: false });
const notAsked: Value = practice(0, 'common practice: agreed for each project');
const spares = (value: number): Value => ({
  value,
  source: 'FAA AC 43.13-1B, chapter 11: spare contacts by the number of contacts',
  edition: '8 September 1998',
  verified: false,
});

/** What a harness meets when it is mated, marked, fitted and bought. */
export const HANDLING_LIMITS = {
  'test-matings': practice(5, 'common practice: matings for electrical test and inspection'),
  'mate-force-max': notAsked,
  'cut-out-tolerance': practice(0.1, 'common practice: punched or milled sheet'),
  'spares-to-25': notAsked,
  'spares-to-100': notAsked,
  'spares-above-100': notAsked,
  'labels-asked': notAsked,
  'size-area-deviation': practice(
    0.25,
    'common practice: constructions of one size differ by less; another unit or system by more',
  ),
  'series-from': practice(25, 'common practice: what is built in tens is bought and made as a series'),
} as const satisfies Record<string, Value>;

/** AC 43.13-1B asks for spare contacts, and for wires that are identified at their ends. */
export const AEROSPACE_HANDLING_LIMITS = {
  ...HANDLING_LIMITS,
  'spares-to-25': spares(2),
  'spares-to-100': spares(4),
  'spares-above-100': spares(6),
} as const;
