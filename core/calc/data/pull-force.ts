import type { CalcSource } from '../calculation';
import type { PublishedTable } from './published-table';

/** One size of a pull table: by gauge, by nominal area, or both. `verified` where the row itself was seen. */
export interface PullRow {
  readonly gauge?: number;
  readonly areaMm2?: number;
  readonly forceN: number;
  readonly verified?: boolean;
}

/** Exact by definition of the pound-force. */
export const N_PER_LBF = 4.4482216152605;

const seen = 'The 18 AWG row was seen in a published comparison; the others are from memory.';

/** Rows in pound-force as printed; shown in newton to 0.1 N. */
const pounds = (rows: readonly (readonly [gauge: number, lbf: number])[]): PullRow[] =>
  rows.map(([gauge, lbf]) => ({
    gauge,
    forceN: Math.round(lbf * N_PER_LBF * 10) / 10,
    verified: gauge === 18,
  }));

/**
 * Minimum tensile force of a crimp by conductor size. The tables are in daily use side by side and differ by a factor of
 * up to 2.3 for one size: a limit means nothing without the name of its table.
 */
export const PULL_TABLES = {
  'iec-60352-2': {
    source: { title: 'IEC 60352-2, table 1: tensile strength of crimped connections', verified: false },
    edition: '2006 with amendment 1:2013',
    rows: [
      { areaMm2: 0.05, gauge: 30, forceN: 6 },
      { areaMm2: 0.08, gauge: 28, forceN: 11 },
      { areaMm2: 0.12, gauge: 26, forceN: 15 },
      { areaMm2: 0.14, forceN: 18 },
      { areaMm2: 0.22, gauge: 24, forceN: 28 },
      { areaMm2: 0.25, forceN: 32 },
      { areaMm2: 0.32, gauge: 22, forceN: 40 },
      { areaMm2: 0.5, gauge: 20, forceN: 60 },
      { areaMm2: 0.75, forceN: 85 },
      { areaMm2: 0.82, gauge: 18, forceN: 90 },
      { areaMm2: 1, forceN: 108 },
      { areaMm2: 1.3, gauge: 16, forceN: 135 },
      { areaMm2: 1.5, forceN: 150 },
      { areaMm2: 2.1, gauge: 14, forceN: 200 },
      { areaMm2: 2.5, forceN: 230 },
      { areaMm2: 3.3, gauge: 12, forceN: 275 },
      { areaMm2: 4, forceN: 310 },
      { areaMm2: 5.3, gauge: 10, forceN: 355 },
      { areaMm2: 6, forceN: 360 },
      { areaMm2: 8.4, gauge: 8, forceN: 370 },
      { areaMm2: 10, forceN: 380 },
    ],
  },
  'ul-486a': {
    source: { title: 'UL 486A-486B: pull-out test values', verified: false, note: seen },
    edition: 'not stated',
    rows: pounds([
      [30, 0.5], [28, 1], [26, 3], [24, 5], [22, 8], [20, 13], [18, 20], [16, 30], [14, 50], [12, 70], [10, 80], [8, 90],
      [6, 100], [4, 140], [2, 180],
    ]),
  },
  as7928: {
    source: { title: 'SAE AS7928 (MIL-T-7928), class 1 terminals: minimum tensile', verified: false, note: seen },
    edition: 'not stated',
    rows: pounds([
      [26, 7], [24, 10], [22, 15], [20, 19], [18, 38], [16, 50], [14, 70], [12, 110], [10, 150], [8, 225], [6, 300], [4, 400],
      [2, 550],
    ]),
  },
  'nasa-8739-4': {
    source: { title: 'NASA-STD-8739.4, table 13-1: pull force of copper grounding leads', verified: true },
    edition: 'change 6, 2011',
    rows: [
      { gauge: 24, forceN: 36, verified: true },
      { gauge: 22, forceN: 57, verified: true },
    ],
  },
  'contact-size-20': {
    source: {
      title: 'Contacts of size 20 (MIL-DTL-39029 type): crimp tensile',
      verified: true,
      note: 'Second hand: a public note that quotes it.',
    },
    edition: 'not stated',
    rows: [
      { gauge: 24, forceN: 36, verified: true },
      { gauge: 22, forceN: 57, verified: true },
      { gauge: 20, forceN: 92, verified: true },
    ],
  },
} as const satisfies Record<string, PublishedTable<PullRow>>; // prettier-ignore

export type PullTable = keyof typeof PULL_TABLES;

/** Tensile strength of soft annealed copper: 37 000 psi in N/mm2. A hard or alloyed wire is stronger. */
export const SOFT_COPPER_N_PER_MM2 = (37_000 * N_PER_LBF) / 25.4 ** 2;

export const SOFT_COPPER: CalcSource = {
  title: 'Breaking force of soft annealed copper at 37 000 psi (public wire tables)',
  verified: true,
};

/** Shares of NASA-STD-8739.4 (change 6): 13.7 for sizes in no table, 13.8 for a pull on the wire of a seated contact. */
export const TENSILE_SHARE = 0.6;
export const RETENTION_SHARE = 0.8;
export const NASA_SHARES: CalcSource = {
  title:
    'NASA-STD-8739.4 (change 6), 13.7: at least 60 % of the wire; 13.8: retention pull at most 80 % of the minimum',
  verified: true,
};
