import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface ContactDerating extends Answer {
  readonly baseA: number;
  readonly deratedA: number;
}

const CURVE: CalcSource = {
  title: 'IEC 60512-5-2 test 5b: derating curve = 0.8 x base curve at the same ambient',
  verified: false,
  note: 'factor from memory; title of the standard seen',
};
const LAW: CalcSource = {
  title: 'steady state at constant resistance: rise proportional to I squared',
  verified: true,
};

const inputs = z.strictObject({
  limitC: field(z.number(), 'Upper limiting temperature of the connector', 'degC'),
  knownA: field(z.number().positive(), 'A current of the base curve', 'A'),
  knownAtC: field(z.number(), 'Ambient of that current', 'degC'),
  ambientC: field(z.number(), 'Ambient temperature', 'degC'),
  exponent: field(z.number().min(1.5).max(2).default(2), 'Exponent'),
  curveFactor: field(z.number().positive().max(1).default(0.8), 'Factor from base curve to derating curve'),
});

/**
 * Current that a contact may carry at an ambient temperature, from one point of its base curve: I0 x ((Tmax - Ta)/(Tmax -
 * T0))^(1/n), and 0.8 of it. From the limiting temperature on it is zero. A curve of the maker wins.
 */
export const contactDerating = calculation<typeof inputs, ContactDerating>({
  id: 'contact-derating',
  title: 'Contact current at an ambient temperature',
  about: 'Base curve through one known point, then the factor of the derating curve.',
  inputs,
  outputs: { baseA: { label: 'Base curve', unit: 'A' }, deratedA: { label: 'Derating curve', unit: 'A' } },
  sources: [CURVE, LAW],
  run(i) {
    if (i.knownAtC >= i.limitC)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'knownAtC',
          value: i.knownAtC,
          range: 'it must lie below limitC',
        },
      };
    const baseA =
      i.knownA * (Math.max(0, i.limitC - i.ambientC) / (i.limitC - i.knownAtC)) ** (1 / i.exponent);
    return answer({
      baseA,
      deratedA: baseA * i.curveFactor,
      working: {
        formula: 'I = factor x I0 x ((Tmax - Ta)/(Tmax - T0))^(1/n)',
        figures: [
          figure('Limit', i.limitC, 'degC'),
          figure('Known current', i.knownA, 'A'),
          figure('at', i.knownAtC, 'degC'),
          figure('Ambient', i.ambientC, 'degC'),
          figure('Exponent', i.exponent),
          figure('Curve factor', i.curveFactor),
        ],
        sources: [CURVE, LAW],
        notes: i.ambientC < i.knownAtC ? ['Colder than the known point: the wire may limit first.'] : [],
      },
    });
  },
});
