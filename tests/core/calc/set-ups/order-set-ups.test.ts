import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderSetUps } from '@latchwork/core/calc/set-ups/order-set-ups';
import { changesOf, countChanges, type Run, type SetUp } from '@latchwork/core/calc/set-ups/set-up';

/** Every sequence with every way round: the outside that the search is held against. */
function fewestByTrying(setUps: readonly SetUp[]): number {
  let fewest = Infinity;
  const runs: Run[] = [];
  const left = new Set(setUps.keys());
  const go = (): void => {
    const sofar = countChanges(setUps, runs);
    if (sofar >= fewest) return;
    if (left.size === 0) {
      fewest = sofar;
      return;
    }
    for (const index of [...left]) {
      left.delete(index);
      for (const swapped of [false, true]) {
        runs.push({ index, swapped });
        go();
        runs.pop();
      }
      left.add(index);
    }
  };
  go();
  return fewest;
}

const end = fc.record({
  applicator: fc.option(fc.constantFrom('P', 'Q', 'R'), { nil: undefined }),
  strip: fc.option(fc.constantFrom('2', '3'), { nil: undefined }),
  seal: fc.option(fc.constantFrom('S', 'T'), { nil: undefined }),
});
const setUp: fc.Arbitrary<SetUp> = fc.record({
  spool: fc.constantFrom('red', 'blue', 'green'),
  a: end,
  b: end,
});

describe('order of set-ups', () => {
  it('finds the fewest changes that there are, against exhaustive search', () => {
    fc.assert(
      fc.property(fc.array(setUp, { minLength: 1, maxLength: 6 }), (setUps) => {
        const found = orderSetUps(setUps);
        expect(found.changes).toBe(fewestByTrying(setUps));
        expect(found.proven).toBe(true);
      }),
      { numRuns: 150, seed: 7 },
    );
  });

  it('runs every set-up once and counts as its sequence does', () => {
    fc.assert(
      fc.property(fc.array(setUp, { maxLength: 40 }), (setUps) => {
        const { runs, changes } = orderSetUps(setUps);
        expect(runs.map((r) => r.index).sort((x, y) => x - y)).toEqual([...setUps.keys()]);
        expect(changes).toBe(countChanges(setUps, runs));
      }),
      { numRuns: 30, seed: 8 },
    );
  });

  it('is never worse than the order that it is given', () => {
    fc.assert(
      fc.property(fc.array(setUp, { minLength: 1, maxLength: 30 }), (setUps) => {
        const asGiven = setUps.map((_, index) => ({ index, swapped: false }));
        expect(orderSetUps(setUps).changes).toBeLessThanOrEqual(countChanges(setUps, asGiven));
      }),
      { numRuns: 60, seed: 9 },
    );
  });

  it('turns a lead round where that saves both applicators', () => {
    const p = { applicator: 'P', strip: '2' };
    const q = { applicator: 'Q', strip: '3' };
    const setUps = [
      { spool: 'red', a: p, b: q },
      { spool: 'red', a: q, b: p },
    ];
    const { runs, changes } = orderSetUps(setUps);
    expect(changes).toBe(5);
    expect(changesOf(setUps, runs).map((c) => c.length)).toEqual([5, 0]);
  });

  it('leaves mounted what a lead without a contact does not need', () => {
    const p = { applicator: 'P', strip: '2' };
    const bare = { strip: '2' };
    const setUps = [
      { spool: 'red', a: p, b: p },
      { spool: 'red', a: bare, b: bare },
      { spool: 'blue', a: p, b: p },
    ];
    expect(orderSetUps(setUps).changes).toBe(6);
  });
});
