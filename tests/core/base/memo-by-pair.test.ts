import { expect, it } from 'vitest';
import { memoByPair } from '@latchwork/core/base/memo-by-pair';

it('works out once for the same two objects, in their order', () => {
  let worked = 0;
  const ask = memoByPair((a: { n: number }, b: { n: number }) => (worked++, a.n - b.n));
  const [one, two] = [{ n: 1 }, { n: 2 }];
  expect([ask(one, two), ask(one, two), ask(two, one), ask(one, one), ask(one, { n: 2 })]).toEqual([-1, -1, 1, 0, -1]); // prettier-ignore
  expect(worked).toBe(4);
});
