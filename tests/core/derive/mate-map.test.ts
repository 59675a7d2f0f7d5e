import { geometryMapOf, mateMapOf } from '@latchwork/core/derive/mate-map';
import { tiny } from '@latchwork/core/model/tiny';
import type { MatingHalf } from '@latchwork/core/model/parts/part';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const base = tiny().parts.find((p) => p.partNumber === 'H-SOCKET') as MatingHalf;
const half = (change: Partial<MatingHalf>): MatingHalf => ({ ...base, ...change }) as MatingHalf;

const pairsText = (a: MatingHalf, b: MatingHalf): string =>
  geometryMapOf(a, b)
    .pairs.map((p) => `${p.a}-${p.b}`)
    .join(' ');

const numbering = fc.constantFrom('row-wise' as const, 'zig-zag' as const, 'loop' as const);
const left = fc.constantFrom('top-left' as const, 'bottom-left' as const);
const MIRROR = { 'top-left': 'top-right', 'bottom-left': 'bottom-right' } as const;

describe('which cavity meets which', () => {
  it('mirrors left and right: equal corners meet in reverse', () => {
    const row = { ways: 3, rows: 1, numbering: 'row-wise', cavityOneCorner: 'top-left' } as const;
    expect(pairsText(half(row), half(row))).toBe('1-3 2-2 3-1');
    expect(pairsText(half(row), half({ ...row, cavityOneCorner: 'top-right' }))).toBe('1-1 2-2 3-3');
  });

  it('keeps rows at their height', () => {
    const a = { ways: 6, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-left' } as const;
    expect(pairsText(half(a), half({ ...a, cavityOneCorner: 'bottom-right' }))).toBe(
      '1-4 2-5 3-6 4-1 5-2 6-3',
    );
  });

  it('pairs a row-wise half with a zig-zag one by place, not by number', () => {
    const a = half({ ways: 6, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-left' });
    const b = half({ ways: 6, rows: 2, numbering: 'zig-zag', cavityOneCorner: 'top-right' });
    expect(pairsText(a, b)).toBe('1-1 2-3 3-5 4-2 5-4 6-6');
  });

  it('pairs a row-wise half with a loop by place', () => {
    const a = half({ ways: 6, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-left' });
    const b = half({ ways: 6, rows: 2, numbering: 'loop', cavityOneCorner: 'top-right' });
    expect(pairsText(a, b)).toBe('1-1 2-2 3-3 4-6 5-5 6-4');
  });

  // EIA/TIA-574 9-way pair (from memory): pins count from the left, sockets from the right, equal numbers meet.
  it('joins the two halves of a 9-way connector number to number', () => {
    const pins = half({ ways: 9, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-left' });
    const sockets = half({ ways: 9, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-right' });
    const map = geometryMapOf(pins, sockets);
    expect(map.isIdentity).toBe(true);
    expect(map.pairs).toHaveLength(9);
    expect(map.source).toBe('geometry');
  });

  it('leaves no cavity out when the shorter rows meet', () => {
    const a = half({ ways: 9, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-left' });
    expect(pairsText(a, a)).toBe('1-5 2-4 3-3 4-2 5-1 6-9 7-8 8-7 9-6');
    const loop = half({ ways: 9, rows: 2, numbering: 'loop', cavityOneCorner: 'top-right' });
    expect(pairsText(a, loop)).toBe('1-1 2-2 3-3 4-4 5-5 6-9 7-8 8-7 9-6');
  });

  it('is the identity for every scheme when the other half starts at the mirrored corner', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 4 }),
        numbering,
        left,
        (ways, rows, n, c) => {
          const a = half({ ways, rows, numbering: n, cavityOneCorner: c });
          const b = half({ ways, rows, numbering: n, cavityOneCorner: MIRROR[c] });
          const map = geometryMapOf(a, b);
          expect(map.pairs).toHaveLength(ways);
          expect(map.isIdentity).toBe(true);
        },
      ),
    );
  });

  it('is the same seen from the other half', () => {
    const any = fc.record({
      numbering,
      cavityOneCorner: fc.constantFrom('top-left', 'top-right', 'bottom-left'),
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 3 }),
        any,
        any,
        (ways, rows, x, y) => {
          const a = half({ ways, rows, ...x } as Partial<MatingHalf>);
          const b = half({ ways, rows, ...y } as Partial<MatingHalf>);
          expect(geometryMapOf(b, a).fromB).toEqual(geometryMapOf(a, b).fromA);
        },
      ),
    );
  });

  it('is not known where a field it stands on is not stated', () => {
    const a = half({ ways: 6, rows: 2, numbering: 'row-wise', cavityOneCorner: 'top-left' });
    const map = geometryMapOf(
      a,
      half({ ...a, numbering: undefined, cavityOneCorner: undefined } as Partial<MatingHalf>),
    );
    expect(map.source).toBe('unknown');
    expect(map.needs).toEqual(['numbering of H-SOCKET', 'cavityOneCorner of H-SOCKET']);
  });

  it.each([
    ['nothing of either', { numbering: undefined, cavityOneCorner: undefined }, {}],
    [
      'one corner',
      { cavityOneCorner: undefined },
      { numbering: 'row-wise', cavityOneCorner: 'bottom-right' },
    ],
    ['one numbering', { numbering: undefined }, { numbering: 'loop', cavityOneCorner: 'top-right' }],
  ] as const)('is then drawn number to number where %s is stated', (_, x, y) => {
    const six = { ways: 6, rows: 2, numbering: undefined, cavityOneCorner: undefined };
    const a = half({ ...six, ...y, cavityOneCorner: undefined, ...x } as Partial<MatingHalf>);
    const b = half({ ...six, ...y } as Partial<MatingHalf>);
    const map = geometryMapOf(a, b);
    expect(map.source).toBe('unknown');
    expect(map.isIdentity).toBe(true);
  });

  it('is then drawn by place where both numberings are stated and differ', () => {
    const six = { ways: 6, rows: 2, cavityOneCorner: undefined };
    const a = half({ ...six, numbering: 'row-wise' } as Partial<MatingHalf>);
    const b = half({ ...six, numbering: 'zig-zag' } as Partial<MatingHalf>);
    expect(pairsText(a, b)).toBe('1-1 2-3 3-5 4-2 5-4 6-6');
    expect(pairsText(b, a)).toBe('1-1 2-4 3-2 4-5 5-3 6-6');
  });

  it('is taken from the declaration where there is one', () => {
    const a = half({ ways: 3, rows: 1, numbering: 'row-wise', cavityOneCorner: 'top-left' });
    const map = mateMapOf({ map: [{ a: '1', b: '2' }] }, a, a);
    expect(map.source).toBe('declared');
    expect(map.fromB.get('2')).toBe('1');
  });
});
