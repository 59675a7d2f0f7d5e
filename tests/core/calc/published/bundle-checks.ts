import { bundleDiameter } from '@latchwork/core/calc/bundle-diameter';
import { packCircles } from '@latchwork/core/calc/packing/pack-circles';
import bundle from '../../../files/reference/bundle-diameter.json';
import packing from '../../../files/reference/circle-packing.json';
import { valueOf, type PublishedCheck } from './check';

/** A packing may be looser than the best known by one part in a hundred; it is never tighter. */
const LOOSER = 0.01;

const records = packing.rows
  .filter((r) => r.n <= 61)
  .map((r): PublishedCheck => {
    const { radius } = packCircles(Array<number>(r.n).fill(1));
    return {
      calculation: 'bundle-diameter', group: 'equal circles, n = 1 to 61: at most 1 % above the record',
      source: 'best known packings: Birgin and Gentil 2010, Specht', confidence: 'published',
      what: `${r.n} circles`, computed: radius, published: r.ratio, unit: '', allowed: { relative: LOOSER },
    };
  }); // prettier-ignore

const packed = (diametersMm: readonly number[]) =>
  valueOf(bundleDiameter.run({ wireDiametersMm: [...diametersMm], laidFactor: 1, coverings: [] }));

const small = bundle.examples.flatMap((e): PublishedCheck[] => {
  const diameters = 'd' in e.in && Array.isArray(e.in.d) ? e.in.d : 'r' in e.in ? e.in.r?.map((r) => 2 * r) : undefined;
  const least = 'D_min' in e.out ? e.out.D_min : 'R_min' in e.out ? 2 * e.out.R_min! : undefined;
  if (!diameters || least === undefined) return [];
  return [{
    calculation: 'bundle-diameter', group: 'two and three unequal circles, exact', source: 'plane geometry (Descartes circle theorem)', confidence: 'derived',
    what: e.name, computed: packed(diameters).packedMm, published: least, unit: 'mm', allowed: { relative: 1e-6 },
  }];
}); // prettier-ignore

const looseOf = (diametersMm: readonly number[]): number =>
  Number(packed(diametersMm).working.figures.find((f) => f.name.startsWith('For comparison'))!.value);
const common = { calculation: 'bundle-diameter', unit: 'mm' } as const;
const equal = (n: number, d: number): number[] => Array<number>(n).fill(d);

const examples: readonly PublishedCheck[] = [
  { ...common, group: 'loose formula 1.2 x sqrt(sum d^2)', source: 'public calculators', confidence: 'derived', what: bundle.examples[0]!.name, computed: looseOf(bundle.examples[0]!.in.d as number[]), published: 4.914, allowed: { absolute: 5e-4 } },
  { ...common, group: 'loose formula 1.2 x sqrt(sum d^2)', source: 'public calculators', confidence: 'derived', what: '7 wires of 1.5 mm', computed: looseOf(equal(7, 1.5)), published: 4.762, allowed: { absolute: 1e-3 } },
  { ...common, group: 'loose formula 1.2 x sqrt(sum d^2)', source: 'public calculators', confidence: 'published', what: '37 wires of 1 mm', computed: looseOf(equal(37, 1)), published: 7.299, allowed: { absolute: 5e-4 } },
  { ...common, group: 'seven wires', source: 'IEC 60502-1 annex A; plane geometry', confidence: 'derived', what: '7 wires of 1.5 mm, ideal', computed: packed(equal(7, 1.5)).packedMm, published: 4.5, allowed: { relative: 1e-6 } },
  { ...common, group: '37 wires, curved hexagonal', source: 'Lubachevsky and Graham 1997', confidence: 'published', what: '37 wires of 1 mm', computed: packed(equal(37, 1)).packedMm, published: 6.7588, allowed: { relative: 1e-4 } },
]; // prettier-ignore

export const bundleChecks: readonly PublishedCheck[] = [...records, ...small, ...examples];
