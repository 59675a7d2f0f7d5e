import type { Part } from '@latchwork/core/model/parts/part';
import { record } from './records';

const small = (partNumber: string, description: string, massG: number, price: number) =>
  record({
    maker: 'sundries',
    partNumber,
    description,
    massG,
    temperatureMaxC: 85,
    terms: { price, minimum: 50, multiple: 50, second: true },
  });

/** Ties, labels, grommets, clamps, strain reliefs and fuses. */
export function sundryParts(): Part[] {
  const ties = [100, 150, 200].map((length): Part => ({
    kind: 'tie',
    ...small(`OY-${length}`, `Cable tie, ${length} mm long, black`, length / 250, 0.02 + length / 10000),
    bundleMinMm: 1.5,
    bundleMaxMm: Math.round(length / 4.4),
  }));
  const labels = [
    ['OQ-25', 'Wrap-around label, 25 x 12 mm, clear tail', 25, 12, 6],
    ['OQ-40', 'Wrap-around label, 40 x 20 mm, clear tail', 40, 20, 12],
    ['OQ-F50', 'Flag label, 50 x 15 mm', 50, 15, 16],
  ] as const;
  return [
    ...ties,
    ...labels.map(([partNumber, description, widthMm, heightMm, bundleMaxMm]): Part => ({
      kind: 'label',
      ...small(partNumber, description, 0.05, 0.06),
      widthMm,
      heightMm,
      bundleMaxMm,
    })),
    ...[6, 9, 13].map((bore): Part => ({
      kind: 'grommet',
      ...small(`OG-${bore}`, `Grommet, bore ${bore} mm, for sheets to 2 mm`, 0.9, 0.14),
      boreMinMm: bore * 0.5,
      boreMaxMm: bore,
    })),
    ...[6, 9, 13, 19].map((bundle): Part => ({
      kind: 'clamp',
      ...small(
        `OD-${bundle}`,
        `P-clamp, lined, for bundles to ${bundle} mm, M4`,
        bundle / 3,
        0.18 + bundle / 100,
      ),
      bundleMinMm: Math.round(bundle * 0.7 * 10) / 10,
      bundleMaxMm: bundle,
      holeMm: 4.3,
    })),
    ...[4, 8].map((bundle): Part => ({
      kind: 'strain-relief',
      ...small(`OF-${bundle}`, `Strain relief clip for bundles to ${bundle} mm`, 1.4, 0.22),
      bundleMinMm: bundle / 2,
      bundleMaxMm: bundle,
    })),
    ...[1, 3, 5, 10].map((ratedA): Part => ({
      kind: 'fuse',
      ...small(`OU-${ratedA}A`, `Fuse in a wire holder, ${ratedA} A, slow`, 5.5, 0.9),
      ratedA,
      voltageMaxV: 32,
      resistanceMohm: Math.round(60 / ratedA),
      meltingA2s: ratedA * ratedA * 4,
      clearingA2s: ratedA * ratedA * 12,
    })),
  ];
}
