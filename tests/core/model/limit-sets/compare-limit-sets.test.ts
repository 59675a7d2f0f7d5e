import { expect, test } from 'vitest';
import type { LimitSet } from '@latchwork/core/model/limit-set';
import { AEROSPACE_LIMITS } from '@latchwork/core/model/limit-sets/aerospace';
import { compareLimitSets } from '@latchwork/core/model/limit-sets/compare-limit-sets';
import { GENERAL_LIMITS } from '@latchwork/core/model/limit-sets/general';

const limit = (id: string, value: number, source = 'a') => ({ id, value, unit: 'mm', source, verified: true }); // prettier-ignore
const set = (limits: LimitSet['limits'], tables: LimitSet['tables'] = []): LimitSet => ({
  name: 'x',
  revision: '1',
  limits,
  tables,
});

test.each<[string, LimitSet, LimitSet, (string | undefined)[][]]>([
  ['alike', set([limit('a', 1)]), set([limit('a', 1)]), []],
  ['another value', set([limit('a', 1)]), set([limit('a', 2)]), [['a', '1 mm', '2 mm']]],
  ['another source only', set([limit('a', 1)]), set([limit('a', 1, 'b')]), []],
  ['one only here', set([limit('a', 1)]), set([]), [['a', '1 mm', undefined]]],
  ['one only there', set([]), set([limit('b', 3)]), [['b', undefined, '3 mm']]],
  ['another table', set([], [{ id: 't', table: 'x' }]), set([], [{ id: 't', table: 'y' }]), [['t', 'x', 'y']]],
])('two sets that are compared: %s', (_name, before, after, expected) => {
  expect(compareLimitSets(before, after).map((d) => [d.id, d.before, d.after])).toEqual(expected);
}); // prettier-ignore

test('the shipped sets differ, and neither differs from itself', () => {
  expect(compareLimitSets(GENERAL_LIMITS, AEROSPACE_LIMITS).length).toBeGreaterThan(0);
  expect(compareLimitSets(GENERAL_LIMITS, GENERAL_LIMITS)).toEqual([]);
});
