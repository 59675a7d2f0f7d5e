import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { facePlaces } from '@latchwork/core/derive/face-places';
import type { HousingPart } from '@latchwork/core/model/parts/housing';

const half = (more: Partial<HousingPart>): HousingPart => ({
  kind: 'housing',
  id: '00000000-0000-4000-8000-000000000001',
  maker: 'Example',
  partNumber: 'H',
  description: '',
  ways: 6,
  rows: 2,
  pitchMm: 3,
  rowPitchMm: 4,
  numbering: 'row-wise',
  cavityOneCorner: 'top-left',
  ...more,
});

const at = (part: HousingPart, view: 'mating-face' | 'wire-entry-face', cavity: string): [number, number] => {
  const place = facePlaces(part, view).places.find((p) => p.cavity === cavity);
  return [place?.xMm ?? NaN, place?.yMm ?? NaN];
};

const anyHalf = fc.record({
  ways: fc.integer({ min: 1, max: 24 }),
  rows: fc.integer({ min: 1, max: 3 }),
  numbering: fc.constantFrom('row-wise', 'zig-zag', 'loop'),
  cavityOneCorner: fc.constantFrom('top-left', 'top-right', 'bottom-left', 'bottom-right'),
} as const);

describe('places on the two faces', () => {
  it('lays a pattern made by hand where it is, in millimetres: 1 2 3 over 4 5 6, pitch 3, rows 4 apart', () => {
    const part = half({});
    expect(['1', '2', '3', '4', '5', '6'].map((c) => at(part, 'mating-face', c))).toEqual([
      [-3, -2], [0, -2], [3, -2], [-3, 2], [0, 2], [3, 2],
    ]); // prettier-ignore
    expect(['1', '2', '3', '4', '5', '6'].map((c) => at(part, 'wire-entry-face', c))).toEqual([
      [3, -2], [0, -2], [-3, -2], [3, 2], [0, 2], [-3, 2],
    ]); // prettier-ignore
  });

  it('shows the 9-way arrangement of EIA/TIA-574 (from memory): the mating face of pins counts 1 to 5 from the left over 6 to 9', () => {
    const nine = half({ ways: 9, pitchMm: 2.77, rowPitchMm: 2.84 });
    expect(at(nine, 'mating-face', '1')[0]).toBeCloseTo(-5.54, 9);
    expect(at(nine, 'mating-face', '5')[0]).toBeCloseTo(5.54, 9);
    expect(at(nine, 'mating-face', '6')).toEqual([expect.closeTo(-4.155, 9), 1.42]);
    // The solder side of the same connector, and the mating face of its socket half, count from the right.
    expect(at(nine, 'wire-entry-face', '1')[0]).toBeCloseTo(5.54, 9);
  });

  it('mirrors every pattern left to right, keeps it upright, and puts cavity 1 at the corner stated', () => {
    fc.assert(
      fc.property(anyHalf, (shape) => {
        const part = half(shape);
        const [mating, wire] = [facePlaces(part, 'mating-face'), facePlaces(part, 'wire-entry-face')];
        mating.places.forEach((p, i) => {
          const other = wire.places[i];
          expect(other?.cavity).toBe(p.cavity);
          expect(other?.xMm).toBeCloseTo(-p.xMm, 9);
          expect(other?.yMm).toBe(p.yMm);
        });
        const [x, y] = at(part, 'mating-face', '1');
        const [across, down] = shape.cavityOneCorner.split('-').reverse() as [string, string];
        const xs = mating.places.filter((p) => p.yMm === y).map((p) => p.xMm);
        expect(x).toBe(across === 'left' ? Math.min(...xs) : Math.max(...xs));
        const ys = mating.places.map((p) => p.yMm);
        expect(y).toBe(down === 'top' ? Math.min(...ys) : Math.max(...ys));
      }),
      { seed: 3 },
    );
  });

  it('names what the record does not state', () => {
    const { pitchMm: _pitch, numbering: _numbering, ...bare } = half({});
    expect(facePlaces(bare, 'mating-face').assumed).toEqual(['pitch', 'numbering']);
  });
});
