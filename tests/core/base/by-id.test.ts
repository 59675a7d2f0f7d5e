import { byId, followIndex } from '@latchwork/core/base/by-id';
import fc from 'fast-check';
import { expect, it } from 'vitest';

interface Item {
  readonly id: string;
  readonly of: number;
}

const IDS = Array.from({ length: 40 }, (_, k) => `i${k}`);

/** A list after an edit: one replaced, put in, taken out or moved, or a bunch at the end. */
function edited(list: readonly Item[], n: number): readonly Item[] {
  const at = (n >> 3) % Math.max(1, list.length);
  const item = (k: number): Item => ({ id: `i${(n + k) % 40}`, of: n });
  const free = [item(0), item(1)].filter((x) => !list.some((y) => y.id === x.id));
  switch (n % 6) {
    case 0:
      return list.map((x, i) => (i === at ? { ...x, of: n } : x));
    case 1:
      return [...list, ...free];
    case 2:
      return [...list.slice(0, at), ...free, ...list.slice(at)];
    case 3:
      return list.filter((_, i) => i !== at);
    case 4:
      return list.slice(0, at);
    default:
      return [...list.slice(at), ...list.slice(0, at)];
  }
}

it('knows after any edits what a Map made from the list knows, also of lists before', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(5000), { maxLength: 40 }), (edits) => {
      const lists: (readonly Item[])[] = [Array.from({ length: 30 }, (_, i) => ({ id: `i${i}`, of: 0 }))];
      byId(lists[0]!);
      for (const n of edits) {
        // Sometimes from an older list, from which another way was already taken.
        const before = lists.at(n % 5 === 0 ? -(1 + (n % lists.length)) : -1)!;
        const after = edited(before, n);
        followIndex(before, after);
        lists.push(after);
      }
      for (const list of lists) {
        const index = byId(list);
        const plain = new Map(list.map((x) => [x.id, x]));
        expect([...index]).toEqual([...plain]);
        expect(index.size).toBe(plain.size);
        expect(IDS.map((id) => index.get(id))).toEqual(IDS.map((id) => plain.get(id)));
        expect(IDS.map((id) => index.placeOf(id) ?? -1)).toEqual(
          IDS.map((id) => list.findIndex((x) => x.id === id)),
        );
      }
    }),
    { numRuns: 200 },
  );
});
