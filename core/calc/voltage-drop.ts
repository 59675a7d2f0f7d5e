import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { temperatureFactor } from './conductor-resistance';
import { COPPER_TEMPERATURE } from './data/copper';

export interface VoltageDrop extends Answer {
  readonly dropV: number;
  readonly dropPercent: number | undefined;
  /** Length of the same kind as the input at which the drop reaches the limit. */
  readonly longestMm: number | undefined;
  readonly lossW: number;
}

/** How much conductor one millimetre of the length stands for. */
const PATHS = { 'total-path': 1, 'one-way-two-wire': 2, 'one-way-three-phase': Math.sqrt(3) } as const;

const inputs = z.strictObject({
  currentA: field(z.number().nonnegative(), 'Current', 'A'),
  ohmPerKm: field(z.number().positive(), 'Resistance of the conductor', 'ohm/km'),
  ohmPerKmAtC: field(z.number().default(20), 'Temperature of that resistance', 'degC'),
  lengthMm: field(z.number().nonnegative(), 'Length', 'mm'),
  lengthIs: field(z.enum(['total-path', 'one-way-two-wire', 'one-way-three-phase']), 'What the length is'),
  temperatureC: field(z.number().default(20), 'Conductor temperature', 'degC'),
  metal: field(z.enum(['copper', 'aluminium']).default('copper'), 'Metal'),
  jointsOhm: field(z.number().nonnegative().default(0), 'Contacts, splices and fuses in the path', 'ohm'),
  supplyV: field(z.number().positive().optional(), 'Supply voltage', 'V'),
  limitV: field(z.number().positive().optional(), 'Allowed drop', 'V'),
});

/**
 * Drop along one path, direct current or power factor 1 without reactance. AC 43.13-1B counts the whole path or a single
 * wire with its ground return (no factor); NEC examples give the one-way length (factor 2, or root 3 between three
 * phases): the input says which. A net with branches is solved as a circuit instead.
 */
export const voltageDrop = calculation<typeof inputs, VoltageDrop>({
  id: 'voltage-drop',
  title: 'Voltage drop of one path',
  about: 'I x R of the path at conductor temperature, with its joints.',
  inputs,
  outputs: {
    dropV: { label: 'Voltage drop', unit: 'V' },
    dropPercent: { label: 'Share of the supply', unit: '%' },
    longestMm: { label: 'Longest length within the allowed drop', unit: 'mm' },
    lossW: { label: 'Loss', unit: 'W' },
  },
  sources: [
    { title: 'FAA AC 43.13-1B, paragraph 11-66 and tables 11-7, 11-8', verified: true },
    COPPER_TEMPERATURE,
  ],
  run(i) {
    const factor = temperatureFactor(i.metal, i.ohmPerKmAtC, i.temperatureC);
    const ohmPerMm = (i.ohmPerKm * factor * PATHS[i.lengthIs]) / 1e6;
    const dropV = i.currentA * (ohmPerMm * i.lengthMm + i.jointsOhm);
    const leftV = i.limitV === undefined ? undefined : i.limitV - i.currentA * i.jointsOhm;
    return answer({
      dropV,
      dropPercent: i.supplyV === undefined ? undefined : (100 * dropV) / i.supplyV,
      longestMm:
        leftV === undefined || i.currentA === 0 ? undefined : Math.max(0, leftV / (i.currentA * ohmPerMm)),
      lossW: dropV * i.currentA * (i.lengthIs === 'one-way-three-phase' ? Math.sqrt(3) : 1),
      working: {
        formula: 'V = I x (r x length x paths x temperature factor + joints)',
        figures: [
          figure('Current', i.currentA, 'A'),
          figure('Resistance', i.ohmPerKm, 'ohm/km'),
          figure('Length', i.lengthMm, 'mm'),
          figure('Paths', PATHS[i.lengthIs]),
          figure('Temperature factor', factor),
          figure('Joints', i.jointsOhm, 'ohm'),
        ],
        sources: [{ title: 'FAA AC 43.13-1B, paragraph 11-66', verified: true }, COPPER_TEMPERATURE],
        notes: [`The length is the ${i.lengthIs.replaceAll('-', ' ')} length.`],
      },
    });
  },
});
