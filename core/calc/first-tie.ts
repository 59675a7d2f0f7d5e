import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { COAXIAL_STRAIGHT, COAXIAL_STRAIGHT_DIAMETERS } from './data/bend-radius';

export interface FirstTie extends Answer {
  readonly straightMm: number;
}

const FAN_OUT: CalcSource = {
  title:
    'Common practice: wires run straight out of a housing before they are gathered, or contacts are pulled askew',
  verified: false,
};

const inputs = z.strictObject({
  kind: field(z.enum(['wires', 'coaxial']).default('wires'), 'What leaves the housing'),
  diameterMm: field(z.number().positive(), 'Diameter of the bundle, or of the coaxial cable', 'mm'),
  faceWidthMm: field(z.number().nonnegative().default(0), 'Longest side of the wire-entry face', 'mm'),
  leastMm: field(z.number().nonnegative().default(25), 'At least', 'mm'),
});

/**
 * Straight length from the rear of a housing to the first tie or bend. Coaxial cable: six of its diameters at each end.
 * Wires: so long that the outermost of them is not pulled more than 45 degrees aside, which is half of what the face is
 * wider than the bundle; never under the least length (25 mm by default, from memory).
 */
export const firstTie = calculation<typeof inputs, FirstTie>({
  id: 'first-tie',
  title: 'First tie behind a housing',
  about: 'Straight length from the rear of the housing to the first tie or bend.',
  inputs,
  outputs: { straightMm: { label: 'Straight length', unit: 'mm' } },
  sources: [FAN_OUT, COAXIAL_STRAIGHT],
  run({ kind, diameterMm, faceWidthMm, leastMm }) {
    const coaxial = kind === 'coaxial';
    const straightMm = coaxial
      ? COAXIAL_STRAIGHT_DIAMETERS * diameterMm
      : Math.max(leastMm, (faceWidthMm - diameterMm) / 2);
    return answer({
      straightMm,
      working: {
        formula: coaxial ? '6 x diameter' : 'larger of the least length and (face - bundle)/2',
        figures: [
          figure('Diameter', diameterMm, 'mm'),
          ...(coaxial
            ? []
            : [figure('Wire-entry face', faceWidthMm, 'mm'), figure('At least', leastMm, 'mm')]),
        ],
        sources: [coaxial ? COAXIAL_STRAIGHT : FAN_OUT],
        notes: coaxial ? [] : ['Not from a standard: enter the length that your shop works to.'],
      },
    });
  },
});
