import { expect, it } from 'vitest';
import { memoByKey } from '@latchwork/core/base/memo-by-key';

it('works out once what is asked for alike, and forgets what was asked for longest ago', () => {
  const worked: string[] = [];
  const ask = memoByKey(
    (list: readonly number[]) => list.join(' '),
    2,
    (list) => {
      worked.push(list.join(' '));
      return list.length === 0 ? undefined : Math.max(...list);
    },
  );
  expect([ask([1, 2]), ask([1, 2]), ask([2, 1]), ask([])]).toEqual([2, 2, 2, undefined]);
  // 1 2 had to go for the third; 2 1 is asked for again and stays, so that the empty one goes next.
  expect([ask([2, 1]), ask([1, 2]), ask([2, 1])]).toEqual([2, 2, 2]);
  expect(worked).toEqual(['1 2', '2 1', '', '1 2']);
});
