import { cavityLayoutOf } from '@latchwork/core/derive/cavity-layout';
import { tiny } from '@latchwork/core/model/tiny';
import type { MatingHalf } from '@latchwork/core/model/parts/part';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const base = tiny().parts.find((p) => p.partNumber === 'H-SOCKET') as MatingHalf;
const half = (change: Partial<MatingHalf>): MatingHalf => ({ ...base, ...change }) as MatingHalf;

/** Cavity numbers as they stand on the mating face, row by row from the top. */
function face(part: MatingHalf): string[] {
  const layout = cavityLayoutOf(part);
  return Array.from({ length: layout.rows }, (_, row) =>
    layout.places
      .filter((p) => p.row === row)
      .sort((a, b) => a.column - b.column)
      .map((p) => p.cavity)
      .join(' '),
  );
}

const numbering = fc.constantFrom('row-wise' as const, 'zig-zag' as const, 'loop' as const);
const corner = fc.constantFrom(
  'top-left' as const,
  'top-right' as const,
  'bottom-left' as const,
  'bottom-right' as const,
);

describe('cavities on the mating face', () => {
  it.each([
    ['row-wise', ['1 2 3', '4 5 6']],
    ['zig-zag', ['1 3 5', '2 4 6']],
    ['loop', ['1 2 3', '6 5 4']],
  ] as const)('count %s from the top left', (scheme, rows) => {
    expect(face(half({ ways: 6, rows: 2, numbering: scheme, cavityOneCorner: 'top-left' }))).toEqual(rows);
  });

  it.each([
    ['top-left', ['1 2 3', '4 5 6']],
    ['top-right', ['3 2 1', '6 5 4']],
    ['bottom-left', ['4 5 6', '1 2 3']],
    ['bottom-right', ['6 5 4', '3 2 1']],
  ] as const)('start at the %s', (cavityOneCorner, rows) => {
    expect(face(half({ ways: 6, rows: 2, numbering: 'row-wise', cavityOneCorner }))).toEqual(rows);
  });

  // The 9-way connector of EIA/TIA-574 (from memory): 5 over 4, the 4 standing between the 5.
  it('centre the shorter row of a 9-way connector', () => {
    const nine = half({ ways: 9, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-left' });
    expect(face(nine)).toEqual(['1 2 3 4 5', '6 7 8 9']);
    const layout = cavityLayoutOf(nine);
    expect(layout.columns).toBe(5);
    expect(['6', '7', '8', '9'].map((c) => layout.byCavity.get(c)?.column)).toEqual([0.5, 1.5, 2.5, 3.5]);
  });

  it('put 9 ways in zig-zag as 5 and 4', () => {
    const nine = half({ ways: 9, rows: 2, numbering: 'zig-zag', cavityOneCorner: 'top-left' });
    expect(face(nine)).toEqual(['1 3 5 7 9', '2 4 6 8']);
  });

  it('stand each at a place of its own, within the face', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 5 }),
        numbering,
        corner,
        (ways, rows, n, c) => {
          const layout = cavityLayoutOf(half({ ways, rows, numbering: n, cavityOneCorner: c }));
          expect(layout.places).toHaveLength(ways);
          expect(new Set(layout.places.map((p) => `${p.column},${p.row}`)).size).toBe(ways);
          for (const p of layout.places) {
            expect(p.column).toBeGreaterThanOrEqual(0);
            expect(p.column).toBeLessThanOrEqual(layout.columns - 1);
            expect(p.row).toBeGreaterThanOrEqual(0);
            expect(p.row).toBeLessThan(layout.rows);
          }
        },
      ),
    );
  });

  it('say which fields were only assumed', () => {
    const blank = { rows: undefined, numbering: undefined, cavityOneCorner: undefined };
    expect(cavityLayoutOf(half({ ...blank, ways: 6 } as Partial<MatingHalf>)).assumed).toEqual([
      'rows',
      'cavityOneCorner',
    ]);
    expect(cavityLayoutOf(half({ ...blank, ways: 6, rows: 2 } as Partial<MatingHalf>)).assumed).toEqual([
      'numbering',
      'cavityOneCorner',
    ]);
    expect(cavityLayoutOf(half({ ...blank, ways: 1 } as Partial<MatingHalf>)).assumed).toEqual([]);
  });
});
