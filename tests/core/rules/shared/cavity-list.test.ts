import { cavityList } from '@latchwork/core/rules/shared/cavity-list';
import { expect, it } from 'vitest';

it.each([
  [[], ''],
  [['3'], '3'],
  [['3', '4'], '3, 4'],
  [['1', '3', '4', '5', '9'], '1, 3 to 5, 9'],
  [['A1', 'A2', '7', '8', '9'], 'A1, A2, 7 to 9'],
])('%j reads "%s"', (cavities, text) => {
  expect(cavityList(cavities)).toBe(text);
});
