import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { tailLength } from '@latchwork/core/rules/tail-length';
import { expect, it } from 'vitest';

const check = (tailLengthMm: number, most = 2.3) =>
  checkHarness(
    deriveHarness(
      tiny((t) => {
        t.part('header', 'HEADER').tailLengthMm = tailLengthMm;
        t.project.limitSet.limits.find((l) => l.id === 'tail-protrusion-max')!.value = most;
      }),
    ),
    [tailLength],
  ).findings;

// Board 1.6 mm; the limits 0.5 and 2.3 mm are common practice and belong to the range.
it.each([
  [2.09, ['fail']],
  [2.1, []],
  [3.9, []],
  [3.91, ['fail']],
])('a tail of %s mm in a board of 1.6 mm: %j', (tail, results) => {
  expect(check(tail).map((f) => f.result)).toEqual(results);
});

it('goes by the limit of the project, and shows where it comes from', () => {
  const [finding] = check(3.2, 1.5);
  expect(finding?.result).toBe('fail');
  expect(finding?.evidence.find((e) => e.label === 'most protrusion')).toEqual({
    label: 'most protrusion',
    value: 1.5,
    unit: 'mm',
    source: expect.stringMatching(/^limit set General 1, common practice.*\(not verified\)$/) as string,
  });
});
