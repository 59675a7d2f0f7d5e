import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { TIE_SPACING, type TieSpacingRow, type TieSpacingTable } from './data/tie-spacing';
import type { PublishedTable } from './data/published-table';

export interface TieSpacing extends Answer {
  readonly spacingMaxMm: number;
  /** Ties for the run: one per started spacing, and two at each breakout. */
  readonly ties: number;
}

const TABLES: Readonly<Record<TieSpacingTable, PublishedTable<TieSpacingRow>>> = TIE_SPACING;

const BREAKOUTS: CalcSource = {
  title: 'NASA workmanship standards 4.02: ties on both sides of a breakout',
  verified: true,
};

const inputs = z.strictObject({
  table: field(
    z.enum(Object.keys(TIE_SPACING) as [TieSpacingTable, ...TieSpacingTable[]]).default('ac-43-13-1b'),
    'Table',
  ),
  diameterMm: field(z.number().positive(), 'Diameter of the bundle', 'mm'),
  lengthMm: field(z.number().nonnegative().default(0), 'Length of the run', 'mm'),
  breakouts: field(z.int().nonnegative().default(0), 'Breakouts'),
});

/**
 * Largest distance of ties along a bundle, and how many a run takes: length/spacing rounded up, plus two for every
 * breakout. Vehicle practice of 8 to 12 inches (TM 9-8000) lies within the aircraft limit.
 */
export const tieSpacing = calculation<typeof inputs, TieSpacing>({
  id: 'tie-spacing',
  title: 'Ties of a run',
  about: 'Largest spacing by bundle diameter, and the number of ties.',
  inputs,
  outputs: {
    spacingMaxMm: { label: 'Largest spacing', unit: 'mm' },
    ties: { label: 'Ties', unit: '' },
  },
  sources: [...Object.values(TABLES).map((t) => t.source), BREAKOUTS],
  run({ table, diameterMm, lengthMm, breakouts }) {
    const { source, edition, rows } = TABLES[table];
    const spacingMaxMm = rows.find((r) => diameterMm <= r.toMm)!.spacingMm;
    return answer({
      spacingMaxMm,
      ties: Math.ceil(lengthMm / spacingMaxMm - 1e-9) + 2 * breakouts,
      working: {
        formula: 'ties = length/spacing rounded up + 2 x breakouts',
        figures: [
          figure('Diameter', diameterMm, 'mm'),
          figure('Length', lengthMm, 'mm'),
          figure('Breakouts', breakouts),
          figure('Edition', edition),
        ],
        sources: [source, BREAKOUTS],
        notes: source.verified ? [] : ['Spacing from memory: not verified.'],
      },
    });
  },
});
