import { lengthTolerance } from '@latchwork/core/calc/length-tolerance';
import { twistTakeUp } from '@latchwork/core/calc/twist-take-up';
import tolerance from '../../../files/reference/length-tolerance.json';
import twist from '../../../files/reference/twist-takeup.json';
import { valueOf, type PublishedCheck } from './check';

const factor = (pitchDiameterMm: number, layMm: number): number =>
  valueOf(twistTakeUp.run({ pitchDiameterMm, layMm, lengthMm: 1000 })).factor;
const pair = (d: number, layMm: number) =>
  valueOf(twistTakeUp.run({ wireDiametersMm: [d, d], layMm, lengthMm: 1000 }));

const [mathForum, pair12, pair16, sixAround, limits] = twist.examples;
const common = { calculation: 'twist-take-up', unit: '' } as const;
const sixFactor = factor(sixAround!.in.Dp_mm!, sixAround!.in.lay_mm!);

const twists: readonly PublishedCheck[] = [
  { ...common, group: 'worked example', source: 'The Math Forum, 16 November 1998', confidence: 'published', what: mathForum!.name, computed: factor(2 * 0.02 * 25.4, 25.4), published: mathForum!.out.factor!, allowed: { absolute: 5e-5 } },
  { ...common, group: 'worked example', source: 'The Math Forum, 16 November 1998', confidence: 'published', what: `${mathForum!.name}, exact`, computed: factor(2 * 0.02 * 25.4, 25.4), published: mathForum!.exact!, allowed: { absolute: 5e-7 } },
  { ...common, group: 'worked example', source: 'The Math Forum, 16 November 1998', confidence: 'published', what: 'feet of each wire for 100 ft', computed: 100 * factor(0.04, 1), published: mathForum!.out.each_wire_ft!, unit: 'ft', allowed: { absolute: 5e-3 } },
  { ...common, group: 'pairs', source: 'helix', confidence: 'derived', what: pair12!.name, computed: pair(1.2, 20).factor, published: pair12!.out.factor!, allowed: { absolute: 5e-6 } },
  { ...common, group: 'pairs', source: 'helix', confidence: 'derived', what: pair16!.name, computed: pair(1.6, pair16!.in.lay_mm!).factor, published: pair16!.out.factor!, allowed: { absolute: 5e-6 } },
  { ...common, group: 'pairs', source: 'helix', confidence: 'derived', what: `${pair16!.name}, wire for 1000 mm`, computed: pair(1.6, pair16!.in.lay_mm!).wireLengthMm, published: pair16!.out.wire_mm_per_1000!, unit: 'mm', allowed: { absolute: 5e-3 } },
  { ...common, group: 'six around one', source: 'helix', confidence: 'derived', what: 'outer wires', computed: sixFactor, published: sixAround!.out.outer_factor!, allowed: { absolute: 5e-6 } },
  { ...common, group: 'six around one', source: 'helix', confidence: 'derived', what: 'centre wire', computed: factor(0, 36), published: sixAround!.out.centre_factor!, allowed: { absolute: 0 } },
  { ...common, group: 'six around one', source: 'helix', confidence: 'derived', what: 'mean of seven', computed: (6 * sixFactor + 1) / 7, published: sixAround!.out.mean_of_7!, allowed: { absolute: 5e-6 } },
  { ...common, group: 'lay limits of stranding', source: 'MIL-DTL-29606A 3.3.1', confidence: 'derived', what: 'lay 8 x diameter', computed: factor(limits!.in.Dp_over_OD!, 8), published: limits!.out.factor_8x!, allowed: { absolute: 5e-5 } },
  { ...common, group: 'lay limits of stranding', source: 'MIL-DTL-29606A 3.3.1', confidence: 'derived', what: 'lay 16 x diameter', computed: factor(limits!.in.Dp_over_OD!, 16), published: limits!.out.factor_16x!, allowed: { absolute: 5e-6 } },
]; // prettier-ignore

const source = 'IPC/WHMA-A-620B final draft 2012, table 11-1';
const bands = tolerance.rows.flatMap((r): PublishedCheck[] =>
  r.to_m === null ? [] : [{
    calculation: 'length-tolerance', group: 'table 11-1, upper ends of the bands', source, confidence: 'published', what: `${r.to_m} m`,
    computed: valueOf(lengthTolerance.run({ lengthMm: r.to_m * 1000 })).plusMm, published: r.plus_mm!, unit: 'mm', allowed: { absolute: 0 },
  }],
); // prettier-ignore
const tolerances = tolerance.checks.flatMap((c): PublishedCheck[] => {
  const { minMm, maxMm } = valueOf(lengthTolerance.run({ lengthMm: c.length_m * 1000 }));
  const base = { calculation: 'length-tolerance', group: 'checks', source, confidence: 'published', unit: 'mm' } as const;
  return [
    { ...base, what: `shortest of ${c.length_m} m`, computed: minMm, published: c.min_mm, allowed: { absolute: 1e-9 } },
    { ...base, what: `longest of ${c.length_m} m`, computed: maxMm, published: c.max_mm, allowed: { absolute: 1e-9 } },
  ];
}); // prettier-ignore

export const lengthChecks: readonly PublishedCheck[] = [...twists, ...bands, ...tolerances];
