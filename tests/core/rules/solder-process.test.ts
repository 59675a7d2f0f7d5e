import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { solderProcess } from '@latchwork/core/rules/solder-process';
import { describe, expect, it } from 'vitest';
import reference from '../../files/reference/soldering-header.json';

/** What the rule says of a header that stands `header` in an oven that does `oven`. */
function verdict(oven: { peakC: number; timeS: number }, header: { peakC: number; timeS: number }): string {
  const project = tiny((t) => {
    Object.assign(t.part('header', 'HEADER'), {
      processes: ['reflow'],
      reflowPeakMaxC: header.peakC,
      reflowTimeMaxS: header.timeS,
    });
    for (const e of t.project.equipment)
      if (e.kind === 'board') e.solderProcess = { process: 'reflow', ...oven };
  });
  return (
    checkHarness(deriveHarness(project), [solderProcess])
      .findings.map((f) => f.result)
      .join() || 'pass'
  );
}

// IPC/JEDEC J-STD-020 D as reproduced in public notes: the user must not exceed 260 °C, nor 30 s within 5 °C of it.
describe('the limits of a part of classification temperature 260 °C', () => {
  const limit = { peakC: reference.reflow.pb_free_Tc.rows[0]!.vol_lt_350, timeS: 30 };

  it('are those that the reference prints', () => {
    expect(limit.peakC).toBe(260);
    expect(reference.reflow.supplier_user).toContain('user must not exceed 260 C nor 30 s');
  });

  it.each([
    [260, 30, 'pass'],
    [261, 30, 'fail'],
    [260, 31, 'fail'],
    [217, 10, 'pass'],
  ])('at %s °C for %s s: %s', (peakC, timeS, expected) => {
    expect(verdict({ peakC, timeS }, limit)).toBe(expected);
  });

  // Same source: a thick part of large volume is classified lower and must not go where a small one may.
  it('are lower for a large part', () => {
    const large = reference.reflow.pb_free_Tc.rows[2]!.vol_gt_2000;
    expect(verdict({ peakC: 260, timeS: 30 }, { peakC: large, timeS: 30 })).toBe('fail');
  });
});
