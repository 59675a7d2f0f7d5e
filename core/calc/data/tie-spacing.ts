import type { PublishedTable } from './published-table';

/** For bundles up to and including `toMm` in diameter. */
export interface TieSpacingRow {
  readonly toMm: number;
  readonly spacingMm: number;
}

export const TIE_SPACING = {
  'nasa-8739-4': {
    source: { title: 'NASA-STD-8739.4, table 9-1: spacing of ties by bundle diameter', verified: false },
    edition: 'change 6, 2011',
    rows: [
      { toMm: 6.4, spacingMm: 19.1 },
      { toMm: 12.7, spacingMm: 38.1 },
      { toMm: 25.4, spacingMm: 50.8 },
      { toMm: Infinity, spacingMm: 76.2 },
    ],
  },
  'ac-43-13-1b': {
    source: {
      title: 'FAA AC 43.13-1B, 11-158: ties where supports are more than 12 inches apart',
      verified: true,
    },
    edition: '8 September 1998',
    rows: [{ toMm: Infinity, spacingMm: 304.8 }],
  },
} as const satisfies Record<string, PublishedTable<TieSpacingRow>>;

export type TieSpacingTable = keyof typeof TIE_SPACING;
