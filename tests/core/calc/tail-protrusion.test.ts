import { tailProtrusionMm } from '@latchwork/core/calc/tail-protrusion';
import { GENERAL_LIMITS } from '@latchwork/core/model/limit-sets/general';
import { expect, it } from 'vitest';
import reference from '../../files/reference/soldering-header.json';

// Worked by hand: what is left of the tail below a gap and a board.
it.each([
  [3.2, 0, 1.6, 1.6],
  [3.2, 0.3, 1.6, 1.3],
  [3.0, 0, 3.2, -0.2],
])(
  'a tail of %s mm, %s mm above a board of %s mm, stands out %s mm',
  (tailLengthMm, standOffMm, board, out) => {
    expect(tailProtrusionMm({ tailLengthMm, standOffMm, boardThicknessMm: board })).toBeCloseTo(out, 9);
  },
);

// IPC-A-610, protrusion in a plated hole, class 2 (from memory).
it('the limit that a project starts with is not above that of the workmanship standard', () => {
  const classTwo = reference.through_hole.protrusion.rows.find((r) => r.class === 2);
  const most = GENERAL_LIMITS.limits.find((l) => l.id === 'tail-protrusion-max');
  expect(most?.value).toBeLessThanOrEqual(Number(classTwo?.max));
  expect(most?.verified).toBe(false);
});
