import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { compareNatural } from '@latchwork/core/base/stable-order';

describe('designators in the order in which people count', () => {
  test.each([
    [
      ['X10', 'X2', 'X1'],
      ['X1', 'X2', 'X10'],
    ],
    [
      ['X1:10', 'X1:9', 'X1'],
      ['X1', 'X1:9', 'X1:10'],
    ],
    [
      ['x2', 'X1', 'X3'],
      ['X1', 'x2', 'X3'],
    ],
    [
      ['W1', 'A12', '7', ''],
      ['', '7', 'A12', 'W1'],
    ],
    [
      ['X01', 'X1', 'X001'],
      ['X001', 'X01', 'X1'],
    ],
    [
      ['1-10-2', '1-9-30'],
      ['1-9-30', '1-10-2'],
    ],
  ])('%j', (list, sorted) => {
    expect(list.toSorted(compareNatural)).toEqual(sorted);
    expect(list.toReversed().toSorted(compareNatural)).toEqual(sorted);
  });

  it('is one order: whatever the order before, the order after is the same', () => {
    const name = fc.string({ unit: fc.constantFrom('X', 'x', '1', '0', '2', ':', '-') });
    fc.assert(
      fc.property(fc.uniqueArray(name), (list) => {
        expect(list.toReversed().toSorted(compareNatural)).toEqual(list.toSorted(compareNatural));
        for (const a of list) for (const b of list) expect(Math.sign(compareNatural(a, b))).toBe(-Math.sign(compareNatural(b, a)) || 0); // prettier-ignore
      }),
    );
  });
});
