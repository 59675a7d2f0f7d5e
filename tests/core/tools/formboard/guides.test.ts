import { guided } from '@latchwork/core/tools/formboard/guides';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const origin = { x: 0, y: 0 };

describe('where a dragged point comes to lie', () => {
  it.each([
    ['nothing near: the 5 mm grid', { x: 52.2, y: 37.4 }, [], [], { x: 50, y: 35 }, []],
    [
      'level with another in x, y on the grid',
      { x: 101, y: 37.4 },
      [],
      [{ x: 102, y: 300 }],
      { x: 102, y: 35 },
      ['x'],
    ],
    ['level with another in y', { x: 52.2, y: 299 }, [], [{ x: 102, y: 300 }], { x: 50, y: 300 }, ['y']],
    [
      'level with two at once',
      { x: 101, y: 299 },
      [],
      [
        { x: 102, y: 0 },
        { x: 7, y: 300 },
      ],
      { x: 102, y: 300 },
      ['x', 'y'],
    ],
    // 3-4-5: 36.87 degrees lies between rays; nothing takes hold.
    ['between two rays: the grid', { x: 40.4, y: 30.4 }, [origin], [], { x: 40, y: 30 }, []],
  ] as const)('%s', (_name, raw, neighbours, others, at, kinds) => {
    const found = guided(raw, neighbours, others, 2);
    expect(found.at).toEqual(at);
    expect(found.guides.map((g) => g.kind)).toEqual(kinds);
  });

  it('takes a ray of 15 degrees from a neighbour, with a length of whole 5 mm', () => {
    // 100 mm at 45 degrees is 70.71/70.71.
    const found = guided({ x: 71.5, y: 70.2 }, [origin], [], 2);
    expect(found.guides.map((g) => g.kind)).toEqual(['ray']);
    expect(found.at.x).toBeCloseTo(Math.SQRT1_2 * 100, 5);
    expect(found.at.y).toBeCloseTo(Math.SQRT1_2 * 100, 5);
  });

  it('never moves a point farther than its reach and half a step', () => {
    const mm = fc.double({ min: -500, max: 500, noNaN: true });
    const point = fc.record({ x: mm, y: mm });
    fc.assert(
      fc.property(
        point,
        fc.array(point, { maxLength: 4 }),
        fc.array(point, { maxLength: 6 }),
        (raw, near, others) => {
          const { at } = guided(raw, near, others, 4);
          // Level in both directions, or level in one and the grid in the other, or a ray and half of its length step.
          expect(Math.hypot(at.x - raw.x, at.y - raw.y)).toBeLessThanOrEqual(Math.hypot(4, 4) + 1e-6);
        },
      ),
    );
  });
});
