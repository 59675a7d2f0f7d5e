import type { PublishedTable } from './published-table';

/** Up to and including `toMm`; either a fixed plus or a share of the length. Nothing may be short. */
export interface LengthToleranceRow {
  readonly toMm: number;
  readonly plusMm?: number;
  readonly plusShare?: number;
}

export const LENGTH_TOLERANCE: PublishedTable<LengthToleranceRow> = {
  source: {
    title: 'IPC/WHMA-A-620, table 11-1: length of cables and wires, classes 1 to 3',
    verified: true,
    note: 'Seen in the final draft of revision B; revision C is quoted with the same values.',
  },
  edition: 'B, final draft of February 2012',
  rows: [
    { toMm: 300, plusMm: 25 },
    { toMm: 1500, plusMm: 50 },
    { toMm: 3000, plusMm: 100 },
    { toMm: 7500, plusMm: 150 },
    { toMm: Infinity, plusShare: 0.05 },
  ],
};
