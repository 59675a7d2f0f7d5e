import { fitLengths } from '@latchwork/core/derive/formboard/layout/fit-lengths';
import { expect, it } from 'vitest';

const run = (from: string, to: string, wantedMm: number, leastMm = 10) => ({ from, to, wantedMm, leastMm });
// A – 100 – M – 100 – B, and M – 100 – C.
const runs = [run('A', 'M', 100), run('M', 'B', 100), run('M', 'C', 100)];

it('leaves the wanted lengths where none is known', () => {
  expect(fitLengths(runs, [])).toEqual([100, 100, 100]);
});

it('meets known lengths that agree with each other', () => {
  // a + b = 300, a + c = 500, b + c = 400: a = 200, b = 100, c = 300.
  const fitted = fitLengths(runs, [
    { from: 'A', to: 'B', lengthMm: 300 },
    { from: 'A', to: 'C', lengthMm: 500 },
    { from: 'C', to: 'B', lengthMm: 400 },
  ]);
  [200, 100, 300].forEach((mm, i) => expect(fitted[i]).toBeCloseTo(mm, 6));
});

it('never goes below the least lengths', () => {
  expect(fitLengths(runs, [{ from: 'A', to: 'B', lengthMm: 5 }])).toEqual([10, 10, 100]);
  const [a, b] = fitLengths(
    [run('A', 'M', 100, 90), run('M', 'B', 100)],
    [{ from: 'A', to: 'B', lengthMm: 120 }],
  );
  expect([a, b]).toEqual([90, 30]);
});
