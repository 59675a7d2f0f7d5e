import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface CutLength extends Answer {
  readonly cutMm: number;
  readonly exactMm: number;
}

const PRACTICE: CalcSource = {
  title:
    'Common practice: length between the datums plus a signed allowance at each end, rounded up to what can be cut',
  verified: true,
};

/** Up to the next multiple of a step. A hair of binary rounding does not make a step more. */
export const roundUpMm = (lengthMm: number, stepMm: number): number => {
  const steps = Math.ceil(lengthMm / stepMm - 1e-9);
  // Not -0, which would print as something else.
  return steps * stepMm || 0;
};

/** What a cut length is made of, mm; allowances are signed. */
export interface CutLengthParts {
  readonly routeMm: number;
  readonly allowancesMm: readonly [number, number];
  readonly serviceLoopMm?: number;
  readonly takeUpMm?: number;
  readonly extraMm?: number;
}

/** The sum of the parts, not rounded. */
export const exactLengthMm = (p: CutLengthParts): number =>
  p.routeMm +
  p.allowancesMm[0] +
  p.allowancesMm[1] +
  (p.serviceLoopMm ?? 0) +
  (p.takeUpMm ?? 0) +
  (p.extraMm ?? 0);

const inputs = z.strictObject({
  routeMm: field(z.number().nonnegative(), 'Route between the datums', 'mm'),
  fromAllowanceMm: field(z.number().default(0), 'Allowance at the first end (signed)', 'mm'),
  toAllowanceMm: field(z.number().default(0), 'Allowance at the second end (signed)', 'mm'),
  serviceLoopMm: field(z.number().nonnegative().default(0), 'Service loops', 'mm'),
  takeUpMm: field(z.number().nonnegative().default(0), 'Twist take-up', 'mm'),
  extraMm: field(z.number().default(0), 'Extra (signed)', 'mm'),
  stepMm: field(z.number().positive().default(1), 'Rounded up to steps of', 'mm'),
});

/**
 * Length to cut a wire to: route + signed allowance of each end + service loops + twist take-up + extra, rounded up to the
 * step. An allowance is negative where the wire stops short of the datum. Not positive: no such wire, a problem.
 */
export const cutLength = calculation<typeof inputs, CutLength>({
  id: 'cut-length',
  title: 'Cut length of a wire',
  about: 'Route, allowances of the ends, service loops and take-up, rounded up.',
  inputs,
  outputs: {
    cutMm: { label: 'Cut length', unit: 'mm' },
    exactMm: { label: 'Before rounding', unit: 'mm' },
  },
  sources: [PRACTICE],
  run(input) {
    const exactMm = exactLengthMm({ ...input, allowancesMm: [input.fromAllowanceMm, input.toAllowanceMm] });
    if (exactMm <= 0)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'the cut length',
          value: exactMm,
          range: 'the allowances take off more than the route is long',
        },
      };
    return answer({
      cutMm: roundUpMm(exactMm, input.stepMm),
      exactMm,
      working: {
        formula: 'cut = round up (route + allowances + service loops + take-up + extra)',
        figures: [
          figure('Route', input.routeMm, 'mm'),
          figure('Allowance, first end', input.fromAllowanceMm, 'mm'),
          figure('Allowance, second end', input.toAllowanceMm, 'mm'),
          figure('Service loops', input.serviceLoopMm, 'mm'),
          figure('Twist take-up', input.takeUpMm, 'mm'),
          figure('Extra', input.extraMm, 'mm'),
          figure('Step', input.stepMm, 'mm'),
        ],
        sources: [PRACTICE],
        notes: [],
      },
    });
  },
});
