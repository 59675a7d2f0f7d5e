import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface ConductorTemperature extends Answer {
  readonly temperatureC: number;
  readonly riseK: number;
}

const SQUARE: CalcSource = {
  title: 'steady state: rise proportional to the loss, I squared',
  verified: true,
};
const FAA: CalcSource = {
  title: 'FAA AC 43.13-1B, paragraph 11-66: T2 = T1 + (TR - T1) x sqrt(I2/Imax)',
  verified: false,
  note: 'variables seen, formula from memory; estimates high below Imax',
};

const inputs = z.strictObject({
  currentA: field(z.number().nonnegative(), 'Current', 'A'),
  ampacityA: field(z.number().positive(), 'Current that brings the wire to its rating', 'A'),
  ambientC: field(z.number(), 'Ambient temperature', 'degC'),
  ratedC: field(z.number(), 'Temperature rating', 'degC'),
  law: field(z.enum(['square', 'ac-43-13']).default('square'), 'Law'),
});

/**
 * Conductor temperature at a current below the one that brings it to its rating. The square law is the physics of a steady
 * state and is used when circuits are solved; the estimate of AC 43.13-1B lies above it up to Imax and is the cautious one.
 */
export const conductorTemperature = calculation<typeof inputs, ConductorTemperature>({
  id: 'conductor-temperature',
  title: 'Temperature of a conductor at its current',
  about: 'From its ampacity at the same ambient, by the square law or the estimate of AC 43.13-1B.',
  inputs,
  outputs: { temperatureC: { label: 'Temperature', unit: 'degC' }, riseK: { label: 'Rise', unit: 'K' } },
  sources: [SQUARE, FAA],
  run(i) {
    if (i.ratedC <= i.ambientC)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'ambientC',
          value: i.ambientC,
          range: 'it must lie below ratedC',
        },
      };
    const load = i.currentA / i.ampacityA;
    const riseK = (i.ratedC - i.ambientC) * (i.law === 'square' ? load ** 2 : Math.sqrt(load));
    return answer({
      temperatureC: i.ambientC + riseK,
      riseK,
      working: {
        formula: i.law === 'square' ? 'T = Ta + (Tr - Ta) x (I/Imax)^2' : 'T = Ta + (Tr - Ta) x sqrt(I/Imax)',
        figures: [
          figure('Current', i.currentA, 'A'),
          figure('Ampacity', i.ampacityA, 'A'),
          figure('Ambient', i.ambientC, 'degC'),
          figure('Rating', i.ratedC, 'degC'),
        ],
        sources: [i.law === 'square' ? SQUARE : FAA],
        notes: [],
      },
    });
  },
});
