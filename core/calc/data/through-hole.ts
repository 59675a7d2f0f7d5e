import type { PublishedTable } from './published-table';

/** Producibility levels of IPC-2222, which are no product classes. `holeOverLeadMaxMm` is from memory. */
export interface ThroughHoleRow {
  readonly level: 'A' | 'B' | 'C';
  /** Least finished hole above the largest lead. */
  readonly holeOverLeadMm: number;
  /** Largest hole above the smallest lead. */
  readonly holeOverLeadMaxMm: number;
  /** Fabrication allowance of the pad. */
  readonly padAllowanceMm: number;
}

export const THROUGH_HOLE: PublishedTable<ThroughHoleRow> = {
  source: {
    title: 'IPC-2222 hole over lead, IPC-2221 pad over hole, by way of a public tutorial',
    verified: true,
    note: 'The largest hole is from memory.',
  },
  edition: 'not stated',
  rows: [
    { level: 'A', holeOverLeadMm: 0.25, holeOverLeadMaxMm: 0.7, padAllowanceMm: 0.6 },
    { level: 'B', holeOverLeadMm: 0.2, holeOverLeadMaxMm: 0.7, padAllowanceMm: 0.5 },
    { level: 'C', holeOverLeadMm: 0.15, holeOverLeadMaxMm: 0.6, padAllowanceMm: 0.4 },
  ],
};

/** Annular ring on one side. */
export const ANNULAR_RING_MM = 0.05;
