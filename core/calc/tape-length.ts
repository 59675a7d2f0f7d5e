import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface TapeLength extends Answer {
  readonly tapeMm: number;
}

const WRAP: CalcSource = {
  title:
    'Plain geometry: a helical wrap covers the surface pi x D x L with w x (1 - overlap) per length of tape',
  verified: true,
};

/** Length of tape on a run, mm: pi D L/(w (1 - overlap)). D is the diameter that is wrapped. */
export const tapeLengthMm = (wrap: {
  readonly diameterMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly overlap: number;
}): number => (Math.PI * wrap.diameterMm * wrap.lengthMm) / (wrap.widthMm * (1 - wrap.overlap));

const inputs = z.strictObject({
  diameterMm: field(z.number().positive(), 'Diameter that is wrapped', 'mm'),
  lengthMm: field(z.number().nonnegative(), 'Length of the run', 'mm'),
  widthMm: field(z.number().positive(), 'Width of the tape', 'mm'),
  overlap: field(z.number().min(-0.9).max(0.9).default(0.5), 'Overlap (share of the width)'),
  endTurns: field(z.number().nonnegative().default(0), 'Extra turns over both ends'),
});

/**
 * Tape for a run: pi x D x L/(w x (1 - overlap)), plus a circumference for each extra turn. A negative overlap is a gap
 * (spaced wrapping). Tape is taken as thin; stretch is not counted.
 */
export const tapeLength = calculation<typeof inputs, TapeLength>({
  id: 'tape-length',
  title: 'Length of tape',
  about: 'Tape for a helical wrap with a given overlap.',
  inputs,
  outputs: { tapeMm: { label: 'Tape', unit: 'mm' } },
  sources: [WRAP],
  run(input) {
    return answer({
      tapeMm: tapeLengthMm(input) + input.endTurns * Math.PI * input.diameterMm,
      working: {
        formula: 'tape = pi x D x L/(w x (1 - overlap)) + turns x pi x D',
        figures: [
          figure('Diameter D', input.diameterMm, 'mm'),
          figure('Length L', input.lengthMm, 'mm'),
          figure('Width w', input.widthMm, 'mm'),
          figure('Overlap', input.overlap),
          figure('Extra turns', input.endTurns),
        ],
        sources: [WRAP],
        notes: ['Stretch of the tape is not counted.'],
      },
    });
  },
});
