import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { AEROSPACE_LIMITS } from '@latchwork/core/model/limit-sets/aerospace';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { spares } from '@latchwork/core/rules/spares';
import { expect, it } from 'vitest';

/** Spare ways that are asked for when X1 has that many ways and but one is free. */
function asked(ways: number): number {
  const project = tiny((t) => {
    t.project.limitSet = structuredClone(AEROSPACE_LIMITS);
    t.part('housing', 'H-SOCKET').ways = ways;
    t.connector('X1').cavities = Array.from({ length: ways - 2 }, (_, i) => ({
      cavity: String(i + 3),
      state: i === 0 ? ('empty' as const) : ('blocked' as const),
    }));
  });
  const { findings } = checkHarness(deriveHarness(project), [spares]);
  const x1 = project.connectors.find((c) => c.designator === 'X1');
  return Number(findings.find((f) => f.objects[0]?.id === x1?.id)?.data['needed']);
}

// FAA AC 43.13-1B, chapter 11: 2 spares for 25 contacts or fewer, 4 for 26 to 100, 6 for more than 100.
it.each([
  [3, 2],
  [25, 2],
  [26, 4],
  [100, 4],
  [101, 6],
])('a connector of %i ways keeps %i spares in the aerospace set', (ways, spare) => {
  expect(asked(ways)).toBe(spare);
});
