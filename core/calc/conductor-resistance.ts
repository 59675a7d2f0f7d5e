import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import {
  ALUMINIUM_ZERO_C,
  CONCENTRIC_LAY_FACTOR,
  COPPER_RESISTIVITY_OHM_MM2_PER_KM,
  COPPER_TEMPERATURE,
  COPPER_ZERO_C,
  IEC_60028,
  LAY_ALLOWANCE,
} from './data/copper';

export interface ConductorResistance extends Answer {
  readonly at20OhmPerKm: number;
  readonly ohmPerKm: number;
  readonly ohm: number;
  /** `catalogue`: the wire's own record; `computed`: from its area and the lay factor. */
  readonly basis: 'catalogue' | 'computed';
}

/**
 * Factor from 20 C to a temperature for annealed copper: (234.5 + T)/254.5. Agrees with alpha = 0.00393/K to 0.1 % from
 * 0 to 100 C; holds about -50 to 250 C. IEC 60228 corrects measurements with 0.004/K instead.
 */
export const copperFactor = (temperatureC: number): number => temperatureFactor('copper', 20, temperatureC);

/** Factor on a resistance from one temperature to another, degrees C: (z + T2)/(z + T1). */
export function temperatureFactor(metal: 'copper' | 'aluminium', fromC: number, toC: number): number {
  const zeroC = metal === 'copper' ? COPPER_ZERO_C : ALUMINIUM_ZERO_C;
  return (zeroC + toC) / (zeroC + fromC);
}

/** Resistance of plain copper at 20 C, ohm/km, for a metal area in mm2 and the excess length of the strands. */
export const copperOhmPerKm = (areaMm2: number, layFactor: number): number =>
  (COPPER_RESISTIVITY_OHM_MM2_PER_KM * layFactor) / areaMm2;

const inputs = z.strictObject({
  areaMm2: field(z.number().positive().optional(), 'Metal area of the conductor', 'mm2'),
  catalogueOhmPerKm: field(
    z.number().positive().optional(),
    'Resistance at 20 C from the wire record',
    'ohm/km',
  ),
  stranded: field(z.boolean().default(true), 'Stranded'),
  layFactor: field(z.number().min(1).max(1.2).optional(), 'Lay factor (computed values only)'),
  lengthMm: field(z.number().nonnegative().default(1_000_000), 'Length of one conductor', 'mm'),
  temperatureC: field(z.number().min(-70).max(300).default(20), 'Conductor temperature', 'degC'),
});

/**
 * DC resistance of a copper conductor at its temperature. The catalogue value (ohm/km at 20 C) wins; without one it is
 * computed from the metal area and marked so: 17.241 ohm mm2/km x lay factor / area. The computed value is that of
 * plain annealed copper: a tinned or nickel-plated wire, or a maximum of a standard, lies 2 to 15 % above it.
 */
export const conductorResistance = calculation<typeof inputs, ConductorResistance>({
  id: 'conductor-resistance',
  title: 'Resistance of a conductor',
  about:
    'DC resistance of a copper conductor at its temperature; a catalogue value wins over the computed one.',
  inputs,
  outputs: {
    at20OhmPerKm: { label: 'Resistance at 20 C', unit: 'ohm/km' },
    ohmPerKm: { label: 'Resistance at temperature', unit: 'ohm/km' },
    ohm: { label: 'Resistance of the length', unit: 'ohm' },
    basis: { label: 'Basis', unit: '' },
  },
  sources: [IEC_60028, COPPER_TEMPERATURE, LAY_ALLOWANCE],
  run(input) {
    const { areaMm2, catalogueOhmPerKm, lengthMm, temperatureC } = input;
    if (catalogueOhmPerKm === undefined && areaMm2 === undefined)
      return { ok: false, problem: { code: 'needs', inputs: ['catalogueOhmPerKm or areaMm2'] } };
    const layFactor = input.layFactor ?? (input.stranded ? CONCENTRIC_LAY_FACTOR : 1);
    const computed = catalogueOhmPerKm === undefined;
    const at20OhmPerKm = catalogueOhmPerKm ?? copperOhmPerKm(areaMm2!, layFactor);
    const ohmPerKm = at20OhmPerKm * copperFactor(temperatureC);
    const sources: CalcSource[] = computed
      ? [IEC_60028, COPPER_TEMPERATURE, ...(layFactor === 1 ? [] : [LAY_ALLOWANCE])]
      : [{ title: 'resistance of the wire record', verified: true }, COPPER_TEMPERATURE];
    return answer({
      at20OhmPerKm,
      ohmPerKm,
      ohm: (ohmPerKm * lengthMm) / 1e6,
      basis: computed ? 'computed' : 'catalogue',
      working: {
        formula: computed
          ? 'R = 1000/58 x lay factor / area x (234.5 + T)/254.5 x length'
          : 'R = R20 x (234.5 + T)/254.5 x length',
        figures: [
          ...(computed
            ? [figure('Metal area', areaMm2!, 'mm2'), figure('Lay factor', layFactor)]
            : [figure('R20 of the wire record', at20OhmPerKm, 'ohm/km')]),
          figure('Temperature', temperatureC, 'degC'),
          figure('Temperature factor', copperFactor(temperatureC)),
          figure('Length', lengthMm, 'mm'),
        ],
        sources,
        notes: computed
          ? ['Computed for plain annealed copper; maxima of wire standards lie 2 to 15 % above.']
          : [],
      },
    });
  },
});
