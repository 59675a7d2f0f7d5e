import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { CONCENTRIC_LAY_FACTOR, COPPER_DENSITY_G_PER_CM3, COPPER_MASS } from './data/copper';
import { INSULATION_DENSITY, INSULATIONS } from './data/insulation';

export interface WireMass extends Answer {
  readonly massGPerM: number;
  readonly conductorGPerM: number;
  readonly insulationGPerM: number;
}

const GEOMETRY: CalcSource = {
  title:
    'Plain geometry: wall between the outside and the conductor, whose strands fill a share of their circle',
  verified: true,
};

/** Strands of a concentric conductor fill about 0.75 of the circle around them: 7 in three diameters are 7/9. */
const STRAND_FILL = 7 / 9;

const inputs = z.strictObject({
  areaMm2: field(z.number().positive(), 'Metal area', 'mm2'),
  stranded: field(z.boolean().default(true), 'Stranded'),
  diameterMm: field(z.number().positive(), 'Outside diameter', 'mm'),
  insulation: field(z.enum(Object.keys(INSULATIONS) as [keyof typeof INSULATIONS]).optional(), 'Insulation'),
  insulationGPerCm3: field(z.number().positive().optional(), 'Density of the insulation', 'g/cm3'),
});

/**
 * Estimate of the mass of an insulated wire, g/m: metal area x 8.89 x lay factor, plus the ring between the outside and the
 * conductor x density of the insulation. Compounds differ by 20 %: use the maker's figure where there is one.
 */
export const wireMass = calculation<typeof inputs, WireMass>({
  id: 'wire-mass',
  title: 'Mass of an insulated wire (estimate)',
  about: 'From metal area, outside diameter and the density of the insulation.',
  inputs,
  outputs: {
    massGPerM: { label: 'Mass per metre', unit: 'g/m' },
    conductorGPerM: { label: 'Conductor', unit: 'g/m' },
    insulationGPerM: { label: 'Insulation', unit: 'g/m' },
  },
  sources: [COPPER_MASS, GEOMETRY, INSULATION_DENSITY],
  run(input) {
    const density = input.insulationGPerCm3 ?? (input.insulation && INSULATIONS[input.insulation]);
    if (density === undefined)
      return { ok: false, problem: { code: 'needs', inputs: ['insulation or insulationGPerCm3'] } };
    const conductorCircleMm2 = input.stranded ? input.areaMm2 / STRAND_FILL : input.areaMm2;
    const ringMm2 = (Math.PI / 4) * input.diameterMm ** 2 - conductorCircleMm2;
    if (ringMm2 < 0)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'outside diameter',
          value: input.diameterMm,
          range: 'the conductor alone is thicker',
        },
      };
    const conductorGPerM =
      input.areaMm2 * COPPER_DENSITY_G_PER_CM3 * (input.stranded ? CONCENTRIC_LAY_FACTOR : 1);
    const insulationGPerM = ringMm2 * density;
    return answer({
      massGPerM: conductorGPerM + insulationGPerM,
      conductorGPerM,
      insulationGPerM,
      working: {
        formula: 'm = area x 8.89 x lay factor + (pi/4 x D^2 - conductor circle) x density',
        figures: [
          figure('Metal area', input.areaMm2, 'mm2'),
          figure('Conductor circle', conductorCircleMm2, 'mm2'),
          figure('Outside diameter', input.diameterMm, 'mm'),
          figure('Density of the insulation', density, 'g/cm3'),
        ],
        sources: [
          COPPER_MASS,
          GEOMETRY,
          ...(input.insulationGPerCm3 === undefined ? [INSULATION_DENSITY] : []),
        ],
        notes: ['An estimate: the mass of the wire record wins.'],
      },
    });
  },
});
