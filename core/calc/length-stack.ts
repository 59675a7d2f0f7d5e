import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface LengthStack extends Answer {
  readonly nominalMm: number;
  readonly worstMinMm: number;
  readonly worstMaxMm: number;
  readonly rssMinMm: number;
  readonly rssMaxMm: number;
}

/** One length of a path with what it may be longer or shorter. */
export interface StackElement {
  readonly nominalMm: number;
  readonly plusMm: number;
  readonly minusMm: number;
}

const STACK: CalcSource = {
  title: 'Common practice of tolerance chains: worst case, and root sum square about the mid-value',
  verified: true,
};

/**
 * Sums a chain. The root sum square takes one-sided tolerances as symmetrical about their middle and independent of each
 * other; with one element it is the worst case.
 */
export function stackOf(elements: readonly StackElement[]): Omit<LengthStack, 'working'> {
  let nominalMm = 0;
  let plus = 0;
  let minus = 0;
  let squares = 0;
  for (const e of elements) {
    nominalMm += e.nominalMm;
    plus += e.plusMm;
    minus += e.minusMm;
    squares += ((e.plusMm + e.minusMm) / 2) ** 2;
  }
  const middle = nominalMm + (plus - minus) / 2;
  const half = Math.sqrt(squares);
  return {
    nominalMm,
    worstMinMm: nominalMm - minus,
    worstMaxMm: nominalMm + plus,
    rssMinMm: middle - half,
    rssMaxMm: middle + half,
  };
}

const inputs = z.strictObject({
  elements: field(
    z
      .array(
        z.strictObject({
          nominalMm: z.number(),
          plusMm: z.number().nonnegative(),
          minusMm: z.number().nonnegative(),
        }),
      )
      .min(1),
    'Lengths along the path, with plus and minus',
    'mm',
  ),
  fromPoint: field(z.int().nonnegative().default(0), 'From point (0: start of the first length)'),
  toPoint: field(z.int().nonnegative().optional(), 'To point (default: end of the last length)'),
});

/**
 * Length between two points of a path, with its tolerance by worst case and by root sum square. Point 0 is the start,
 * point k the end of length k. Between a point and itself everything is zero.
 */
export const lengthStack = calculation<typeof inputs, LengthStack>({
  id: 'length-stack',
  title: 'Tolerance of a chain of lengths',
  about: 'Worst case and root sum square between two points of a path.',
  inputs,
  outputs: {
    nominalMm: { label: 'Nominal', unit: 'mm' },
    worstMinMm: { label: 'Shortest, worst case', unit: 'mm' },
    worstMaxMm: { label: 'Longest, worst case', unit: 'mm' },
    rssMinMm: { label: 'Shortest, root sum square', unit: 'mm' },
    rssMaxMm: { label: 'Longest, root sum square', unit: 'mm' },
  },
  sources: [STACK],
  run({ elements, fromPoint, toPoint = elements.length }) {
    const last = Math.max(fromPoint, toPoint);
    if (last > elements.length)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'point',
          value: last,
          range: `the path has the points 0 to ${elements.length}`,
        },
      };
    const between = elements.slice(Math.min(fromPoint, toPoint), last);
    return answer({
      ...stackOf(between),
      working: {
        formula: 'worst case: sum of tolerances; RSS: mid-value -/+ sqrt(sum of half widths squared)',
        figures: between.map((e, i) =>
          figure(`Length ${i + 1}`, `${e.nominalMm} +${e.plusMm}/-${e.minusMm}`, 'mm'),
        ),
        sources: [STACK],
        notes: ['Root sum square supposes that the lengths vary independently and about their middle.'],
      },
    });
  },
});
