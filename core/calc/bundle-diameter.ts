import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { coveringThicknessMm, TAPE_LAYERS } from './covering-thickness';
import { packCircles, type PackedCircle } from './packing/pack-circles';

export interface BundleDiameter extends Answer {
  /** Outside, over all coverings. */
  readonly diameterMm: number;
  /** Of the wires as they lie, before coverings. */
  readonly laidMm: number;
  /** Of the tightest arrangement found: no bundle of rigid round wires of this set was found smaller. */
  readonly packedMm: number;
  /** Share of the packed circle that is wire. */
  readonly fill: number;
  /** The cross-section in millimetres, wires in the order given, the centre at 0/0, as packed. */
  readonly circles: readonly PackedCircle[];
}

/**
 * Ratio of a bundle as it is laid by hand to the tightest packing. 1.08 leads for many wires to the loose-bundle formula
 * 1.2 x sqrt(sum d^2), as the tightest packing of many circles has about 1.11 x sqrt(sum d^2).
 */
export const LAID_FACTOR = 1.08;

/** Up to this many wires a bundle cannot lie looser than it packs: they touch each other all round. */
const TOUCHING_WIRES = 3;

const PACKING: CalcSource = {
  title: 'Circles in a circle; best packings known: Graham et al. 1998, Specht (tables, 2013)',
  verified: true,
  note: 'The packing is ours; the tables are what it is tested against: at most 1 % above, up to 61 equal wires.',
};
const LOOSE: CalcSource = {
  title: 'Loose bundle D = 1.2 x sqrt(sum d^2), public calculators',
  verified: true,
  note: 'Too small for two and three wires; used for the laid factor only.',
};

const inputs = z.strictObject({
  wireDiametersMm: field(
    z.array(z.number().positive()).min(1).max(2000),
    'Outside diameter of each wire',
    'mm',
  ),
  laidFactor: field(z.number().min(1).max(1.5).default(LAID_FACTOR), 'Laid against tightest'),
  coverings: field(
    z
      .array(
        z.strictObject({ wallMm: z.number().nonnegative(), overlap: z.number().min(0).max(0.9).optional() }),
      )
      .default([]),
    'Coverings from the inside out (wall, overlap of a tape)',
    'mm',
  ),
});

/**
 * Outside diameter of a bundle: the wires as unequal circles in the smallest circle found, times the laid factor from four
 * wires on, plus twice the wall of each covering (a tape counts its layers). Holds for round wires that run straight; a
 * twisted pair counts as one circle of twice its wire (it sweeps that), a cable as its own diameter.
 */
export const bundleDiameter = calculation<typeof inputs, BundleDiameter>({
  id: 'bundle-diameter',
  title: 'Diameter of a bundle',
  about: 'True packing of unequal circles, loosened as bundles are in practice, plus the coverings.',
  inputs,
  outputs: {
    diameterMm: { label: 'Outside diameter', unit: 'mm' },
    laidMm: { label: 'Wires as laid', unit: 'mm' },
    packedMm: { label: 'Wires at their tightest', unit: 'mm' },
    fill: { label: 'Filled share', unit: '' },
    circles: { label: 'Cross-section', unit: 'mm' },
  },
  sources: [PACKING, LOOSE],
  run({ wireDiametersMm, laidFactor, coverings }) {
    const n = wireDiametersMm.length;
    const { radius, circles } = packCircles(wireDiametersMm.map((d) => d / 2));
    const packedMm = 2 * radius;
    const factor = n > TOUCHING_WIRES ? laidFactor : 1;
    const laidMm = packedMm * factor;
    const squares = wireDiametersMm.reduce((sum, d) => sum + d * d, 0);
    const wallsMm = coverings.map((c) => coveringThicknessMm(c.wallMm, c.overlap));
    const diameterMm = laidMm + 2 * wallsMm.reduce((a, b) => a + b, 0);
    return answer({
      diameterMm,
      laidMm,
      packedMm,
      fill: squares / packedMm ** 2,
      circles,
      working: {
        formula: 'D = packed x laid factor + 2 x sum of walls',
        figures: [
          figure('Wires', n),
          figure('Packed', packedMm, 'mm'),
          figure('Laid factor', factor),
          ...wallsMm.map((w, i) => figure(`Covering ${i + 1}`, w, 'mm')),
          ...(n > TOUCHING_WIRES
            ? [figure('For comparison: 1.2 x sqrt(sum d^2)', 1.2 * Math.sqrt(squares), 'mm')]
            : []),
        ],
        sources: [PACKING, LOOSE, ...(coverings.some((c) => c.overlap) ? [TAPE_LAYERS] : [])],
        notes: [
          'Wires are taken as rigid and round. The tightest arrangement is the best found, not a proved minimum.',
          n > TOUCHING_WIRES
            ? 'The laid factor is an allowance for hand-laid bundles, editable; it is not from a standard.'
            : 'Up to three wires touch each other: no laid factor.',
        ],
      },
    });
  },
});
