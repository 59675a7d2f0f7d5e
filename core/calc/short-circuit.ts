import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { COPPER_ZERO_C } from './data/copper';

export interface ShortCircuit extends Answer {
  /** A s^0.5 per mm2. */
  readonly k: number;
  /** k2 S2: what the conductor takes. */
  readonly withstandA2s: number;
  /** I2 t: what the protection lets through. */
  readonly letThroughA2s: number;
  /** Let-through over withstand; above 1 the insulation is beyond its limit. */
  readonly share: number;
  readonly temperatureC: number;
  /** Time in which this current brings the conductor to its limit. */
  readonly longestS: number | undefined;
}

/** sqrt(Qc (B + 20)/rho20) for copper: Qc = 3.45e-3 J/(K mm3), rho20 = 17.241e-6 ohm mm, B = 234.5 C; A s^0.5 per mm2. */
const COPPER_K = 226;

const K_FORMULA: CalcSource = {
  title: 'IEC 60364-5-54 annex A: k = 226 x sqrt(ln((234.5 + Tf)/(234.5 + Ti))) for copper',
  verified: false,
  note: 'from memory; gives the tabulated 115, 141 and 143 of IEC 60364-4-43',
};
const ADIABATIC: CalcSource = {
  title: 'IEC 60364-4-43: I2 t <= k2 S2, up to 5 s',
  verified: false,
  note: 'from memory',
};

/** k of a copper conductor between two temperatures (degrees C), A s^0.5 per mm2. */
export const copperK = (startC: number, limitC: number): number =>
  COPPER_K * Math.sqrt(Math.log((COPPER_ZERO_C + limitC) / (COPPER_ZERO_C + startC)));

const inputs = z.strictObject({
  areaMm2: field(z.number().positive(), 'Metal area', 'mm2'),
  startC: field(z.number(), 'Conductor temperature before the fault', 'degC'),
  limitC: field(z.number(), 'Limit of the insulation for a fault', 'degC'),
  letThroughA2s: field(z.number().positive().optional(), 'Total I2t of the fuse', 'A2s'),
  faultA: field(z.number().positive().optional(), 'Fault current', 'A'),
  clearingS: field(z.number().positive().max(5).optional(), 'Clearing time at that current', 's'),
});

/**
 * Adiabatic heating of a copper conductor in a short circuit: no heat leaves it, so it holds for clearing times up to 5 s and
 * is on the cautious side. The let-through is the fuse's total I2t, or fault current squared times the clearing time.
 */
export const shortCircuit = calculation<typeof inputs, ShortCircuit>({
  id: 'short-circuit',
  title: 'Short circuit of a wire',
  about: 'Adiabatic: I2 t against k2 S2, up to 5 s.',
  inputs,
  outputs: {
    k: { label: 'k', unit: 'A s^0.5/mm2' },
    withstandA2s: { label: 'k2 S2', unit: 'A2s' },
    letThroughA2s: { label: 'I2 t', unit: 'A2s' },
    share: { label: 'I2 t over k2 S2', unit: '' },
    temperatureC: { label: 'Conductor temperature reached', unit: 'degC' },
    longestS: { label: 'Longest clearing time at this current', unit: 's' },
  },
  sources: [ADIABATIC, K_FORMULA],
  run(i) {
    if (i.limitC <= i.startC)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'startC',
          value: i.startC,
          range: 'it must lie below limitC',
        },
      };
    const letThroughA2s =
      i.letThroughA2s ??
      (i.faultA !== undefined && i.clearingS !== undefined ? i.faultA ** 2 * i.clearingS : undefined);
    if (letThroughA2s === undefined)
      return { ok: false, problem: { code: 'needs', inputs: ['letThroughA2s, or faultA and clearingS'] } };
    const k = copperK(i.startC, i.limitC);
    const withstandA2s = (k * i.areaMm2) ** 2;
    const longestS = i.faultA === undefined ? undefined : withstandA2s / i.faultA ** 2;
    const notes = ['Adiabatic; holds up to 5 s.'];
    if (longestS !== undefined && longestS > 5)
      notes.push('The longest time lies beyond 5 s, where the formula is cautious.');
    return answer({
      k,
      withstandA2s,
      letThroughA2s,
      share: letThroughA2s / withstandA2s,
      temperatureC:
        (COPPER_ZERO_C + i.startC) * Math.exp(letThroughA2s / (COPPER_K * i.areaMm2) ** 2) - COPPER_ZERO_C,
      longestS,
      working: {
        formula: 'I2 t <= k2 S2; k = 226 x sqrt(ln((234.5 + Tf)/(234.5 + Ti)))',
        figures: [
          figure('Metal area', i.areaMm2, 'mm2'),
          figure('Start', i.startC, 'degC'),
          figure('Limit', i.limitC, 'degC'),
          figure('k', k, 'A s^0.5/mm2'),
          figure('I2 t', letThroughA2s, 'A2s'),
        ],
        sources: [ADIABATIC, K_FORMULA],
        notes,
      },
    });
  },
});
