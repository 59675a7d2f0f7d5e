import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { CONCENTRIC_LAY_FACTOR, COPPER_DENSITY_G_PER_CM3, COPPER_MASS, LAY_ALLOWANCE } from './data/copper';

export interface ConductorMass extends Answer {
  readonly kgPerKm: number;
  readonly massG: number;
}

const inputs = z.strictObject({
  areaMm2: field(z.number().positive(), 'Metal area', 'mm2'),
  stranded: field(z.boolean().default(true), 'Stranded'),
  layFactor: field(z.number().min(1).max(1.2).optional(), 'Lay factor'),
  densityGPerCm3: field(z.number().positive().default(COPPER_DENSITY_G_PER_CM3), 'Density', 'g/cm3'),
  lengthMm: field(z.number().nonnegative().default(1_000_000), 'Length', 'mm'),
});

/**
 * Mass of the metal of a conductor without insulation: kg/km = mm2 x g/cm3 x lay factor. The mass of a finished wire is
 * a catalogue value; compounds differ too much to compute it.
 */
export const conductorMass = calculation<typeof inputs, ConductorMass>({
  id: 'conductor-mass',
  title: 'Mass of a conductor',
  about: 'Metal only, without plating and insulation.',
  inputs,
  outputs: { kgPerKm: { label: 'Mass per length', unit: 'kg/km' }, massG: { label: 'Mass', unit: 'g' } },
  sources: [COPPER_MASS, LAY_ALLOWANCE],
  run(input) {
    const layFactor = input.layFactor ?? (input.stranded ? CONCENTRIC_LAY_FACTOR : 1);
    const kgPerKm = input.areaMm2 * input.densityGPerCm3 * layFactor;
    return answer({
      kgPerKm,
      massG: (kgPerKm * input.lengthMm) / 1000,
      working: {
        formula: 'm = area x density x lay factor x length',
        figures: [
          figure('Metal area', input.areaMm2, 'mm2'),
          figure('Density', input.densityGPerCm3, 'g/cm3'),
          figure('Lay factor', layFactor),
          figure('Length', input.lengthMm, 'mm'),
        ],
        sources: layFactor === 1 ? [COPPER_MASS] : [COPPER_MASS, LAY_ALLOWANCE],
        notes: ['Metal only: plating and insulation are not counted.'],
      },
    });
  },
});
