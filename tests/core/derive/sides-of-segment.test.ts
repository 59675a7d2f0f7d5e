import { sidesOfSegment } from '@latchwork/core/derive/sides-of-segment';
import type { Segment } from '@latchwork/core/model/topology';
import { expect, it } from 'vitest';

/** "ab bc" is a segment from a to b and one from b to c; each is named by its nodes. */
const segments = (text: string): Segment[] =>
  text.split(' ').map((s) => ({ id: s, designator: s, from: s[0]!, to: s[1]! }));

it.each([
  ['ab', 'ab', 'a | b'],
  ['ab bc', 'ab', 'a | bc'],
  ['ab bc bd ae', 'ab', 'ae | bcd'],
  ['ab bc bd ae', 'bd', 'abce | d'],
  ['ab bc ca', 'ab', 'loop'],
  ['ab bc ca cd', 'cd', 'abc | d'],
  ['ab ab', 'ab', 'a | b'],
])('of %s, cut at %s: %s', (all, cut, expected) => {
  const list = segments(all);
  const sides = sidesOfSegment(
    list.find((s) => s.id === cut)!,
    list,
  );
  const text = sides?.map((nodes) => [...nodes].sort().join('')).join(' | ') ?? 'loop';
  expect(text).toBe(expected);
});

it('sees a second way between the same two nodes', () => {
  const [first] = segments('ab');
  expect(sidesOfSegment(first!, [first!, { ...first!, id: 'twin' }])).toBeNull();
});
