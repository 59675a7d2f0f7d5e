import type { PublishedTable } from './published-table';

/** A share is a whole number of strands, or a fraction of all of them (0.06 of 6 %), rounded down. */
export interface StrandRow {
  readonly minStrands: number;
  readonly class12: number;
  readonly class3Untinned: number;
  readonly class3Tinned: number;
}

export const STRAND_DAMAGE: PublishedTable<StrandRow> = {
  source: {
    title: 'IPC/WHMA-A-620, table 3-1: strands scraped, nicked or severed',
    verified: true,
    note: 'Seen in the final draft of revision B; check it against the edition you work to.',
  },
  edition: 'B, final draft of February 2012',
  rows: [
    { minStrands: 2, class12: 0, class3Untinned: 0, class3Tinned: 0 },
    { minStrands: 7, class12: 1, class3Untinned: 0, class3Tinned: 1 },
    { minStrands: 16, class12: 3, class3Untinned: 0, class3Tinned: 2 },
    { minStrands: 26, class12: 4, class3Untinned: 3, class3Tinned: 3 },
    { minStrands: 41, class12: 5, class3Untinned: 4, class3Tinned: 4 },
    { minStrands: 61, class12: 6, class3Untinned: 5, class3Tinned: 5 },
    { minStrands: 121, class12: 0.06, class3Untinned: 0.05, class3Tinned: 0.05 },
  ],
};

export interface AircraftStrandRow {
  readonly minStrands: number;
  readonly maxStrands: number;
  readonly nicked: number;
  readonly broken: number;
}

/** Copper conductors; of aluminium no strand may be nicked or broken. Nicked and broken count apart. */
export const AIRCRAFT_STRAND_DAMAGE: PublishedTable<AircraftStrandRow> = {
  source: { title: 'FAA AC 43.13-1B, table 11-13: allowable nicked or broken strands', verified: true },
  edition: '8 September 1998',
  rows: [
    { minStrands: 19, maxStrands: 19, nicked: 2, broken: 0 },
    { minStrands: 37, maxStrands: 37, nicked: 4, broken: 0 },
    { minStrands: 133, maxStrands: 133, nicked: 6, broken: 6 },
    { minStrands: 665, maxStrands: 817, nicked: 6, broken: 6 },
    { minStrands: 1045, maxStrands: 1330, nicked: 6, broken: 6 },
    { minStrands: 1665, maxStrands: 1665, nicked: 6, broken: 6 },
    { minStrands: 2109, maxStrands: 2109, nicked: 6, broken: 6 },
  ],
};
