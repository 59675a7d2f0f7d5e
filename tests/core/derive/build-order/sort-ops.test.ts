import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STAGES, type BuildOp } from '@latchwork/core/derive/build-order/build-op';
import { sortOps } from '@latchwork/core/derive/build-order/sort-ops';

const op = (id: string, stage: BuildOp['stage'], needs: readonly string[] = []): BuildOp => ({
  id,
  stage,
  gather: '',
  what: id,
  place: id,
  objects: [],
  parts: [],
  needs: needs.map((n) => ({ op: n, because: 'so it is' })),
});

describe('order of operations', () => {
  it('goes by stage where nothing else decides, and by need where something does', () => {
    const sorted = sortOps([op('test', 'test', ['lock']), op('lock', 'lock', ['late']), op('late', 'crimp', ['tie']), op('tie', 'fix'), op('cut', 'cut')]); // prettier-ignore
    expect(sorted.ok && sorted.ops.map((o) => o.id)).toEqual(['cut', 'tie', 'late', 'lock', 'test']);
  });

  it('names operations that wait for each other, and makes no order of them', () => {
    const sorted = sortOps([op('a', 'cut', ['b']), op('b', 'crimp', ['a']), op('c', 'cut')]);
    expect(sorted).toEqual({ ok: false, ring: ['a', 'b'] });
  });

  it('puts every operation once, after all that it needs, whatever the needs', () => {
    const someOps = fc
      .integer({ min: 1, max: 40 })
      .chain((n) =>
        fc.tuple(
          fc.array(fc.constantFrom(...STAGES), { minLength: n, maxLength: n }),
          fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 60 }),
        ),
      );
    fc.assert(
      fc.property(someOps, ([stages, pairs]) => {
        // Needs point to smaller numbers, so there is an order.
        const needs = stages.map((_, i) => pairs.flatMap(([a, b]) => (b === i && a < i ? [`op${a}`] : [])));
        const ops = stages.map((stage, i) => op(`op${i}`, stage, needs[i]));
        const sorted = sortOps(ops);
        if (!sorted.ok) throw new Error('no order');
        const at = new Map(sorted.ops.map((o, i) => [o.id, i]));
        expect(at.size).toBe(ops.length);
        for (const o of ops) for (const n of o.needs) expect(at.get(n.op)).toBeLessThan(at.get(o.id) ?? -1);
      }),
      { seed: 4 },
    );
  });
});
