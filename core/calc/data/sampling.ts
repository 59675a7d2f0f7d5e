import type { CalcSource } from '../calculation';

/** ISO 2859-1:1999 tables 1 and 2-A, single sampling, normal inspection; the same values as MIL-STD-105E. */
export const ISO_2859_1: CalcSource = {
  title: 'ISO 2859-1:1999, tables 1 and 2-A: single sampling plans, normal inspection',
  verified: true,
};

/** Code letters; I and O are not used. */
export const LETTERS = 'ABCDEFGHJKLMNPQR';

/** Sample size of each letter. */
export const SAMPLE_SIZES = [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000] as const;

export const LEVELS = ['S1', 'S2', 'S3', 'S4', 'I', 'II', 'III'] as const;
export type Level = (typeof LEVELS)[number];

/** Largest lot of a row, and the letters of the levels in the order of LEVELS. */
export const CODE_LETTERS: readonly (readonly [largestLot: number, letters: string])[] = [
  [8, 'AAAAAAB'],
  [15, 'AAAAABC'],
  [25, 'AABBBCD'],
  [50, 'ABBCCDE'],
  [90, 'BBCCCEF'],
  [150, 'BBCDDFG'],
  [280, 'BCDEEGH'],
  [500, 'BCDEFHJ'],
  [1200, 'CCEFGJK'],
  [3200, 'CDEGHKL'],
  [10000, 'CDFGJLM'],
  [35000, 'CDFHKMN'],
  [150000, 'DEGJLNP'],
  [500000, 'DEGJMPQ'],
  [Infinity, 'DEHKNQR'],
];

/** Letter at which a lot is accepted on no nonconforming item, for each AQL in percent. */
export const ZERO_LETTER = {
  '0.40': 'G',
  '0.65': 'F',
  '1.0': 'E',
  '1.5': 'D',
  '2.5': 'C',
  '4.0': 'B',
  '6.5': 'A',
} as const;
export type Aql = keyof typeof ZERO_LETTER;

/**
 * Acceptance numbers from the zero letter on to larger samples. An arrow sends to the plan of another letter, sample size
 * included: up to the zero letter, or down to the first plan that accepts one.
 */
export const ACCEPTANCE = [0, 'up', 'down', 1, 2, 3, 5, 7, 10, 14, 21] as const;
