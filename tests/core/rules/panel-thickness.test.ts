import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { panelThickness } from '@latchwork/core/rules/panel-thickness';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

function verdict(
  thicknessMm: number,
  coatingsMm: number,
  thicknessMinMm: number,
  thicknessMaxMm: number,
): string {
  const project = tiny((t) => {
    const id = t.newId();
    const area = { position: { x: 0, y: 0 }, widthMm: 5, heightMm: 80 };
    t.project.equipment.push({ kind: 'panel', id, designator: 'A3', ...area, thicknessMm, coatingsMm });
    t.connector('X2').equipment = id;
    Object.assign(t.part('housing', 'H-PIN'), {
      mounting: 'panel',
      panel: { thicknessMinMm, thicknessMaxMm },
    });
  });
  return (
    checkHarness(deriveHarness(project), [panelThickness])
      .findings.map((f) => f.result)
      .join() || 'pass'
  );
}

describe('a panel with its coatings', () => {
  // Tenths of a millimetre do not add up exactly in binary (0.1 + 0.2): the limits still belong to the range.
  it('latches at both limits and not a hundredth beyond', () => {
    const tenths = fc.integer({ min: 5, max: 60 });
    fc.assert(
      fc.property(tenths, fc.integer({ min: 0, max: 5 }), fc.integer({ min: 1, max: 10 }), (t, c, room) => {
        const [thickness, coatings] = [t / 10, c / 10];
        const whole = (t + c) / 10;
        expect(verdict(thickness, coatings, whole, whole + room)).toBe('pass');
        expect(verdict(thickness, coatings, whole / 2, whole)).toBe('pass');
        expect(verdict(thickness, coatings, whole + 0.01, whole + room)).toBe('fail');
        expect(verdict(thickness, coatings, whole / 2, whole - 0.01)).toBe('fail');
      }),
      { numRuns: 60 },
    );
  });
});
