import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface PegFit extends Answer {
  /** Smallest hole less largest peg; negative where they interfere. */
  readonly playMinMm: number;
  readonly playMaxMm: number;
  /** What is left of the least play after the position error between two pegs. */
  readonly spareMm: number;
  readonly verdict: 'free' | 'may bind' | 'never fits';
}

const GEOMETRY: CalcSource = {
  title: 'Plain geometry: play = hole - peg; two pegs share the error of their distance',
  verified: true,
};

const inputs = z.strictObject({
  pegMm: field(z.number().positive(), 'Peg diameter', 'mm'),
  pegToleranceMm: field(z.number().nonnegative().default(0), 'Peg, plus and minus', 'mm'),
  holeMm: field(z.number().positive(), 'Hole diameter', 'mm'),
  holeToleranceMm: field(z.number().nonnegative().default(0), 'Hole, plus and minus', 'mm'),
  distanceErrorMm: field(
    z.number().nonnegative().default(0),
    'Error of the distance of two pegs against their holes',
    'mm',
  ),
});

/**
 * Whether a peg or board lock goes into its hole: play between hole and peg at the limits of both, less what the distance
 * of two of them may be off (each gives half its play to either side, so two give one play). A lock that is meant to be
 * pressed in has a negative play by design: compare with its own hole range.
 */
export const pegFit = calculation<typeof inputs, PegFit>({
  id: 'peg-fit',
  title: 'Peg in its hole',
  about: 'Play of pegs and board locks in their holes, at the limits of both.',
  inputs,
  outputs: {
    playMinMm: { label: 'Least play', unit: 'mm' },
    playMaxMm: { label: 'Most play', unit: 'mm' },
    spareMm: { label: 'Left after the distance error', unit: 'mm' },
    verdict: { label: 'Fit', unit: '' },
  },
  sources: [GEOMETRY],
  run(input) {
    const tolerance = input.pegToleranceMm + input.holeToleranceMm;
    const playMinMm = input.holeMm - input.pegMm - tolerance;
    const playMaxMm = input.holeMm - input.pegMm + tolerance;
    const spareMm = playMinMm - input.distanceErrorMm;
    return answer({
      playMinMm,
      playMaxMm,
      spareMm,
      verdict: spareMm >= -1e-9 ? 'free' : playMaxMm < -1e-9 ? 'never fits' : 'may bind',
      working: {
        formula: 'play = hole - peg -/+ tolerances; left = least play - distance error',
        figures: [
          figure('Hole', input.holeMm, 'mm'),
          figure('Peg', input.pegMm, 'mm'),
          figure('Tolerances', tolerance, 'mm'),
          figure('Distance error', input.distanceErrorMm, 'mm'),
        ],
        sources: [GEOMETRY],
        notes: [],
      },
    });
  },
});
