import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { LENGTH_TOLERANCE } from './data/length-tolerance';

export interface LengthTolerance extends Answer {
  readonly minMm: number;
  readonly maxMm: number;
  readonly plusMm: number;
  readonly minusMm: number;
}

const inputs = z.strictObject({ lengthMm: field(z.number().positive(), 'Nominal length', 'mm') });

/**
 * Default tolerance of a cable or wire length where the drawing states none. One-sided: never short. The upper end of a
 * band belongs to it; above 7.5 m the tolerance jumps from 150 mm to 5 % (375 mm). Bands are those printed in metres;
 * those printed in feet end elsewhere (25 ft are 7.62 m).
 */
export const lengthTolerance = calculation<typeof inputs, LengthTolerance>({
  id: 'length-tolerance',
  title: 'Tolerance of a length',
  about: 'Default tolerance by length band, measured end to end over the reference surfaces.',
  inputs,
  outputs: {
    minMm: { label: 'Shortest', unit: 'mm' },
    maxMm: { label: 'Longest', unit: 'mm' },
    plusMm: { label: 'Plus', unit: 'mm' },
    minusMm: { label: 'Minus', unit: 'mm' },
  },
  sources: [LENGTH_TOLERANCE.source],
  run({ lengthMm }) {
    const row = LENGTH_TOLERANCE.rows.find((r) => lengthMm <= r.toMm)!;
    const plusMm = row.plusMm ?? lengthMm * row.plusShare!;
    return answer({
      minMm: lengthMm,
      maxMm: lengthMm + plusMm,
      plusMm,
      minusMm: 0,
      working: {
        formula: row.plusMm === undefined ? `+${row.plusShare! * 100} %, -0` : `+${row.plusMm} mm, -0`,
        figures: [
          figure('Nominal length', lengthMm, 'mm'),
          figure('Band up to', Number.isFinite(row.toMm) ? row.toMm : 'any length', 'mm'),
        ],
        sources: [LENGTH_TOLERANCE.source],
        notes: [`Edition: ${LENGTH_TOLERANCE.edition}. A tolerance on the drawing wins.`],
      },
    });
  },
});
