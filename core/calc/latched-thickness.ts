import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface LatchedThickness extends Answer {
  readonly thicknessMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
}

const GEOMETRY: CalcSource = {
  title: 'Plain geometry: a latch grips the sheet, the coatings of both faces, and what lies between',
  verified: true,
};

const inputs = z.strictObject({
  sheetMm: field(z.number().positive(), 'Sheet', 'mm'),
  sheetToleranceMm: field(z.number().nonnegative().default(0), 'Sheet, plus and minus', 'mm'),
  coatingPerFaceMm: field(z.number().nonnegative().default(0), 'Coating of one face', 'mm'),
  coatedFaces: field(z.union([z.literal(0), z.literal(1), z.literal(2)]).default(2), 'Coated faces'),
  labelMm: field(z.number().nonnegative().default(0), 'Label, foil or gasket under the flange', 'mm'),
});

/** Thickness that a panel latch has to take: sheet + coatings + label, with the tolerance of the sheet. */
export const latchedThickness = calculation<typeof inputs, LatchedThickness>({
  id: 'latched-thickness',
  title: 'Panel thickness with coatings',
  about: 'What a panel latch grips: sheet, coatings and labels.',
  inputs,
  outputs: {
    thicknessMm: { label: 'Thickness', unit: 'mm' },
    leastMm: { label: 'Least', unit: 'mm' },
    mostMm: { label: 'Most', unit: 'mm' },
  },
  sources: [GEOMETRY],
  run(input) {
    const coatings = input.coatingPerFaceMm * input.coatedFaces;
    const thicknessMm = input.sheetMm + coatings + input.labelMm;
    return answer({
      thicknessMm,
      leastMm: thicknessMm - input.sheetToleranceMm,
      mostMm: thicknessMm + input.sheetToleranceMm,
      working: {
        formula: 'thickness = sheet + coated faces x coating + label',
        figures: [
          figure('Sheet', input.sheetMm, 'mm'),
          figure('Coatings', coatings, 'mm'),
          figure('Label', input.labelMm, 'mm'),
        ],
        sources: [GEOMETRY],
        notes: [],
      },
    });
  },
});
