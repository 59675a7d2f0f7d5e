import { listDifference } from '@latchwork/core/base/list-difference';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const item = (name: string) => ({ name });
const [a, b, c, d] = ['a', 'b', 'c', 'd'].map(item) as [
  { name: string },
  { name: string },
  { name: string },
  { name: string },
];

it.each([
  ['nothing changed', [a, b], [a, b], [], []],
  ['one was added at the end', [a, b], [a, b, c], [], [c]],
  ['one was taken out of the middle', [a, b, c], [a, c], [b], []],
  ['one was replaced', [a, b, c], [a, d, c], [b], [d]],
  ['only the order changed', [a, b, c], [c, a, b], [], []],
  ['everything is new', [a, b], [c, d], [a, b], [c, d]],
])('%s', (_name, before, after, gone, fresh) => {
  expect(listDifference(before, after)).toEqual({ gone, fresh });
});

it('leads from the old set of elements to the new one', () => {
  const pool = Array.from({ length: 12 }, (_, i) => item(String(i)));
  const list = fc.shuffledSubarray(pool);
  fc.assert(
    fc.property(list, list, (before, after) => {
      const { gone, fresh } = listDifference(before, after);
      const kept = before.filter((x) => !gone.includes(x));
      expect(new Set([...kept, ...fresh])).toEqual(new Set(after));
      expect(fresh.some((x) => before.includes(x))).toBe(false);
    }),
  );
});
