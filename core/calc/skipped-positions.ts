import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface SkippedPositions extends Answer {
  /** Between two contacts with the stated positions left empty. */
  readonly distanceMm: number;
  /** Fewest positions to leave empty for the needed distance. */
  readonly skipNeeded: number | undefined;
}

const GEOMETRY: CalcSource = { title: 'plain geometry: (k + 1) x pitch - contact width', verified: true };

const inputs = z.strictObject({
  pitchMm: field(z.number().positive(), 'Pitch', 'mm'),
  contactWidthMm: field(
    z.number().nonnegative(),
    'Width of the live metal in the direction of the row',
    'mm',
  ),
  skipped: field(z.int().nonnegative().default(0), 'Positions left empty in between'),
  neededMm: field(z.number().nonnegative().optional(), 'Distance that is needed', 'mm'),
});

/**
 * Distance through the air between contacts of one row with k positions left empty: (k + 1) x pitch - width. An empty
 * position must hold no metal. Along the plastic the way is as long or longer where ribs stand between.
 */
export const skippedPositions = calculation<typeof inputs, SkippedPositions>({
  id: 'skipped-positions',
  title: 'Distance with positions left empty',
  about: '(k + 1) x pitch - width of the live metal.',
  inputs,
  outputs: {
    distanceMm: { label: 'Distance', unit: 'mm' },
    skipNeeded: { label: 'Positions to leave empty', unit: '' },
  },
  sources: [GEOMETRY],
  run(i) {
    const perPosition = i.pitchMm;
    return answer({
      distanceMm: Math.max(0, (i.skipped + 1) * perPosition - i.contactWidthMm),
      // The margin absorbs binary fractions: 2 x 2.54 - 0.64 is 4.44.
      skipNeeded:
        i.neededMm === undefined
          ? undefined
          : Math.max(0, Math.ceil((i.neededMm + i.contactWidthMm) / perPosition - 1 - 1e-9)),
      working: {
        formula: 'd = (k + 1) x pitch - contact width',
        figures: [
          figure('Pitch', i.pitchMm, 'mm'),
          figure('Contact width', i.contactWidthMm, 'mm'),
          figure('Positions left empty', i.skipped),
          ...(i.neededMm === undefined ? [] : [figure('Needed', i.neededMm, 'mm')]),
        ],
        sources: [GEOMETRY],
        notes: ['The positions in between hold no metal.'],
      },
    });
  },
});
