import { bundleDiameter } from '@latchwork/core/calc/bundle-diameter';
import { packCircles, type Packing } from '@latchwork/core/calc/packing/pack-circles';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import reference from '../../files/reference/bundle-diameter.json';
import records from '../../files/reference/circle-packing.json';
import { valueOf } from './published/check';

const HAIR = 1e-9;

/** Largest overlap of two circles, and the most that one stands out of the hole; both relative to the hole. */
function faults({ circles, radius }: Packing): { overlap: number; outside: number } {
  let overlap = 0;
  let outside = 0;
  circles.forEach((a, i) => {
    outside = Math.max(outside, (Math.hypot(a.x, a.y) + a.r - radius) / radius);
    for (const b of circles.slice(i + 1))
      overlap = Math.max(overlap, (a.r + b.r - Math.hypot(a.x - b.x, a.y - b.y)) / radius);
  });
  return { overlap, outside };
}

const radii = fc.array(fc.double({ min: 0.2, max: 4, noNaN: true }), { minLength: 1, maxLength: 30 });

describe('a packing of circles in a circle', () => {
  it('has no overlap, encloses every circle and keeps their order', () => {
    fc.assert(
      fc.property(radii, (given) => {
        const packing = packCircles(given);
        const { overlap, outside } = faults(packing);
        expect(overlap).toBeLessThan(HAIR);
        expect(outside).toBeLessThan(HAIR);
        expect(packing.circles.map((c) => c.r)).toEqual(given);
      }),
      { numRuns: 40 },
    );
  });

  it('is not below what any packing must have: the two largest side by side, and the area of all', () => {
    fc.assert(
      fc.property(radii, (given) => {
        const { radius } = packCircles(given);
        const [a = 0, b = 0] = [...given].sort((x, y) => y - x);
        expect(radius).toBeGreaterThanOrEqual((a + b) * (1 - HAIR));
        expect(radius ** 2).toBeGreaterThanOrEqual(given.reduce((s, r) => s + r * r, 0) * (1 - HAIR));
      }),
      { numRuns: 30 },
    );
  });

  it('is not above the packing of the largest as often as there are wires, loosely laid', () => {
    fc.assert(
      fc.property(radii, (given) => {
        const { radius } = packCircles(given);
        // Common practice: 1.3 x sqrt(sum d^2) is the loosest bundle; few and unlike wires can exceed it.
        const loose = 1.3 * Math.sqrt(given.reduce((s, r) => s + r * r, 0));
        const [a = 0, b = 0] = [...given].sort((x, y) => y - x);
        expect(radius).toBeLessThan(Math.max(loose, 1.1 * (a + b)));
      }),
      { numRuns: 30 },
    );
  });

  it('does not depend on the order of the wires, and is the same every time', () => {
    fc.assert(
      fc.property(radii, (given) => {
        const { radius } = packCircles(given);
        expect(packCircles([...given].reverse()).radius).toBe(radius);
        expect(packCircles(given)).toEqual(packCircles([...given]));
      }),
      { numRuns: 10 },
    );
  });

  it('scales with its circles', () => {
    const given = [1, 2, 0.5, 0.7, 1.3, 0.9];
    const { radius } = packCircles(given);
    // A power of two changes no digit on the way; an inch may, and the search then ends elsewhere by a hair.
    expect(packCircles(given.map((r) => 4 * r)).radius).toBe(4 * radius);
    expect(packCircles(given.map((r) => 25.4 * r)).radius / radius).toBeCloseTo(25.4, 4);
  });

  it('takes 500 mixed wires without an overlap', () => {
    const sizes = [0.3, 0.375, 0.45, 0.6, 0.8, 1.05];
    const packing = packCircles(Array.from({ length: 500 }, (_, i) => sizes[(i * i + 3 * i) % 6]!));
    const { overlap, outside } = faults(packing);
    expect(overlap).toBeLessThan(HAIR);
    expect(outside).toBeLessThan(HAIR);
    const fill = packing.circles.reduce((s, c) => s + c.r ** 2, 0) / packing.radius ** 2;
    // Practice: mixed bundles fill 0.60 to 0.75 as laid; the tightest found must fill more.
    expect(fill).toBeGreaterThan(0.75);
  });

  it('takes a thick wire among thin ones', () => {
    const { radius, circles } = packCircles([10, ...Array<number>(12).fill(0.2)]);
    // In a crescent of width e(1 + cos v) twelve lie side by side to v = 11 x 0.2/10.2: e is 0.2024 at the least.
    expect(radius).toBeGreaterThan(10.2023);
    expect(radius).toBeLessThan(10.21);
    expect(circles).toHaveLength(13);
  });

  it('of nothing has no size', () => {
    expect(packCircles([])).toEqual({ radius: 0, circles: [] });
  });
});

// Descartes' circle theorem: three circles that touch each other lie in one of the radius below. A third that fits into the
// gap beside the two largest, which fill a diameter, adds nothing (30/19 beside 3 and 2).
test('three circles come to what Descartes says, or to the two largest alone', () => {
  const one = fc.double({ min: 0.5, max: 3, noNaN: true });
  fc.assert(
    fc.property(one, one, one, (...given) => {
      const [a, b, c] = [...given].sort((x, y) => y - x) as [number, number, number];
      const gap = (a * b * (a + b)) / (a * a + a * b + b * b);
      const around = (a * b * c) / (2 * Math.sqrt(a * b * c * (a + b + c)) - (a * b + b * c + c * a));
      const expected = c <= gap ? a + b : around;
      expect(Math.abs(packCircles(given).radius / expected - 1)).toBeLessThan(1e-5);
    }),
    { numRuns: 200 },
  );
});

// Trap of the reference file: counting hexagonal layers gives 5, 7 and 9 for 19, 37 and 61 wires.
test.each([
  [19, 5],
  [37, 7],
  [61, 9],
])('%s equal wires lie closer than %s diameters of hexagonal layers', (n, layers) => {
  expect(packCircles(Array<number>(n).fill(0.5)).radius * 2).toBeLessThan(layers);
  const row = reference.tables.concentric.rows.find((r) => r.n === n);
  expect(row?.factor).toBe(layers);
});

// IEC 60502-1, table A.2: assembly coefficients are for laid-up cores, so no less than the tightest packing known.
test.each(
  reference.tables.IEC_k.rows.filter((r) => r.confidence === 'published' && r.k_alternative === undefined),
)('IEC coefficient of $n cores, $k, is no tighter than the packing', ({ n, k }) => {
  const record = records.rows.find((r) => r.n === n)!.ratio;
  const { radius } = packCircles(Array<number>(n).fill(1));
  // The coefficients are rounded to 0.01.
  expect(k).toBeGreaterThan(record - 0.006);
  expect(k).toBeGreaterThan(radius * 0.99 - 0.006);
});

describe('the diameter of a bundle', () => {
  const bundle = (wireDiametersMm: number[], coverings: { wallMm: number; overlap?: number }[] = []) =>
    valueOf(bundleDiameter.run({ wireDiametersMm, laidFactor: 1.08, coverings }));

  // Trap of the reference file: 1.2 x sqrt(sum d^2) is too small for two and three wires.
  it.each([
    [2, 2],
    [3, 1 + 2 / Math.sqrt(3)],
  ])('of %s wires of 1 mm is %s mm, not what the loose formula says', (n, expected) => {
    const { diameterMm } = bundle(Array<number>(n).fill(1));
    expect(diameterMm).toBeCloseTo(expected, 6);
    expect(diameterMm).toBeGreaterThan(1.2 * Math.sqrt(n));
  });

  it('of many mixed wires comes to the loose formula within 5 %', () => {
    const wires = Array.from({ length: 120 }, (_, i) => [1.2, 1.5, 1.8, 2.4][i % 4]!);
    const loose = 1.2 * Math.sqrt(wires.reduce((s, d) => s + d * d, 0));
    expect(Math.abs(bundle(wires).diameterMm / loose - 1)).toBeLessThan(0.05);
  });

  it('counts a covering twice, and a half-overlapped tape as two layers', () => {
    const bare = bundle([2, 2]).diameterMm;
    expect(bundle([2, 2], [{ wallMm: 0.5 }]).diameterMm).toBeCloseTo(bare + 1, 9);
    expect(bundle([2, 2], [{ wallMm: 0.13, overlap: 0.5 }]).diameterMm).toBeCloseTo(bare + 0.52, 9);
    expect(bundle([2, 2], [{ wallMm: 0.5 }, { wallMm: 0.25 }]).diameterMm).toBeCloseTo(bare + 1.5, 9);
  });
});
