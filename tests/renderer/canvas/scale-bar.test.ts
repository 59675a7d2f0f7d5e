import { MM_PER_INCH } from '@latchwork/core/model/length-text';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { barLength } from '../../../renderer/canvas/formboard/scale-bar';

it.each([
  [1, 'mm', 100, '100 mm'],
  [0.9, 'mm', 200, '200 mm'],
  [24, 'mm', 5, '5 mm'],
  [0.08, 'mm', 2000, '2000 mm'],
  [3, 'in', 2 * MM_PER_INCH, '2 in'],
] as const)('at %s px per mm in %s the bar is %s mm long', (pxPerMm, unit, mm, words) => {
  expect(barLength(pxPerMm, unit)).toEqual({ mm, words });
});

it('is between 72 and 180 pixels long at every zoom, in both units', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.08, max: 24, noNaN: true }),
      fc.constantFrom('mm' as const, 'in' as const),
      (s, unit) => {
        const px = barLength(s, unit).mm * s;
        expect(px).toBeLessThanOrEqual(180 + 1e-9);
        // From 2 to 5 is the largest step.
        expect(px).toBeGreaterThanOrEqual(180 / 2.5 - 1e-9);
      },
    ),
  );
});
