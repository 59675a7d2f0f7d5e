import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface ContactHeating extends Answer {
  readonly riseK: number;
  readonly temperatureC: number;
  /** Current at which the rise is that of the rating, with this many ways loaded. */
  readonly ratedWithLoadedA: number;
}

const LAW: CalcSource = {
  title: 'steady state at constant resistance: rise proportional to I squared',
  verified: true,
};
const BASIS: CalcSource = {
  title: 'EIA-364-70: customary rating at a rise of 30 K; measured exponents 1.8 to 2.0',
  verified: false,
  note: 'from memory',
};

const inputs = z.strictObject({
  currentA: field(z.number().nonnegative(), 'Current', 'A'),
  ratedA: field(z.number().positive(), 'Rated current of the contact', 'A'),
  riseAtRatedK: field(z.number().positive().default(30), 'Rise at rated current', 'K'),
  exponent: field(z.number().min(1.5).max(2).default(2), 'Exponent'),
  loadedWaysFactor: field(
    z.number().positive().max(1).default(1),
    'Factor on the rated current for the loaded ways',
  ),
  ambientC: field(z.number(), 'Ambient temperature', 'degC'),
});

/**
 * Temperature of a contact: ambient + rise at rated current x (I/(rated x loaded-ways factor))^exponent. The rise at rated
 * current and the loaded-ways factor belong to the connector; the defaults are custom, not a property of any contact.
 */
export const contactHeating = calculation<typeof inputs, ContactHeating>({
  id: 'contact-heating',
  title: 'Heating of a contact',
  about: 'Rise at rated current scaled by the load and the number of loaded ways.',
  inputs,
  outputs: {
    riseK: { label: 'Rise', unit: 'K' },
    temperatureC: { label: 'Contact temperature', unit: 'degC' },
    ratedWithLoadedA: { label: 'Rated current with these ways loaded', unit: 'A' },
  },
  sources: [LAW, BASIS],
  run(i) {
    const ratedWithLoadedA = i.ratedA * i.loadedWaysFactor;
    const riseK = i.riseAtRatedK * (i.currentA / ratedWithLoadedA) ** i.exponent;
    return answer({
      riseK,
      temperatureC: i.ambientC + riseK,
      ratedWithLoadedA,
      working: {
        formula: 'T = Ta + rise at rated x (I/(I rated x loaded-ways factor))^n',
        figures: [
          figure('Current', i.currentA, 'A'),
          figure('Rated current', i.ratedA, 'A'),
          figure('Rise at rated', i.riseAtRatedK, 'K'),
          figure('Loaded-ways factor', i.loadedWaysFactor),
          figure('Exponent', i.exponent),
          figure('Ambient', i.ambientC, 'degC'),
        ],
        sources: [LAW, BASIS],
        notes: [],
      },
    });
  },
});
