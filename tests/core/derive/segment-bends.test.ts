import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { bendsOf } from '@latchwork/core/derive/segment-bends';
import { tiny } from '@latchwork/core/model/tiny';
import { describe, expect, it } from 'vitest';

/** The bends of S1, from 0/0 over the via points to 300/0. */
const bends = (via: [number, number][], lengthMm?: number) =>
  bendsOf(
    deriveHarness(
      tiny((t) => {
        const s = t.project.segments[0]!;
        s.via = via.map(([x, y]) => ({ x, y }));
        if (lengthMm !== undefined) s.lengthMm = lengthMm;
      }),
    ).segments[0]!,
  ).map((b) => ({
    at: Math.round(b.atMm * 1000) / 1000,
    turn: Math.round(b.turnDeg * 1000) / 1000,
    radius: Math.round(b.radiusMm * 1000) / 1000,
  }));

// Plain geometry: an arc around a corner that turns by t touches both runs at R tan(t/2) from the corner.
describe('the bends of a segment', () => {
  it('has none when it is straight, with or without via points', () => {
    expect(bends([])).toEqual([]);
    expect(bends([[150, 0]])).toEqual([]);
    expect(bends([[150, 1]])).toEqual([]);
  });

  it('a right angle has room for the shorter of its two runs', () => {
    expect(
      bends([
        [0, 80],
        [300, 80],
      ]),
    ).toEqual([
      { at: 80, turn: 90, radius: 80 },
      { at: 380, turn: 90, radius: 80 },
    ]);
  });

  it('a run between two bends is shared by halves', () => {
    expect(
      bends([
        [100, 0],
        [100, 40],
        [300, 40],
      ]).slice(0, 2),
    ).toEqual([
      { at: 100, turn: 90, radius: 20 },
      { at: 140, turn: 90, radius: 20 },
    ]);
  });

  it('a flat corner has room for more than its runs are long', () => {
    // 45 degrees each, 1/tan(22.5 degrees) = 1 + sqrt 2.
    const [first] = bends([
      [100, 0],
      [200, 100],
    ]);
    expect(first?.turn).toBe(45);
    expect(first?.radius).toBeCloseTo((Math.hypot(100, 100) / 2) * (1 + Math.SQRT2), 2);
  });

  it('turning back has no room at all', () => {
    expect(bends([[400, 0]])[0]).toEqual({ at: 400, turn: 180, radius: 0 });
  });

  it('a typed length stretches the drawing', () => {
    const drawn = 80 + 300 + 80;
    expect(
      bends(
        [
          [0, 80],
          [300, 80],
        ],
        2 * drawn,
      ).map((b) => [b.at, b.radius]),
    ).toEqual([
      [160, 160],
      [760, 160],
    ]);
  });
});

describe('the bends of a curved segment', () => {
  const curved = (points: readonly [number, number][]) =>
    bendsOf(
      deriveHarness(
        tiny((t) => {
          const [first, ...via] = points.map(([x, y]) => ({ x, y }));
          const last = via.pop()!;
          t.project.nodes[0]!.position = first!;
          t.project.nodes[1]!.position = last;
          Object.assign(t.project.segments[0]!, { shape: 'curve', via });
        }),
      ).segments[0]!,
    );

  // Points on a circle: the curve through them bends about as the circle does, and turns from the
  // direction of the first chord to that of the last, 75 degrees.
  it('have the radius of the arc that the points lie on', () => {
    const arc = [0, 15, 30, 45, 60, 75, 90].map((deg): [number, number] => {
      const a = (deg * Math.PI) / 180;
      return [200 * Math.sin(a), 200 * (1 - Math.cos(a))];
    });
    const found = curved(arc);
    expect(found).toHaveLength(5);
    for (const b of found.slice(1, -1)) expect(Math.abs(b.radiusMm - 200)).toBeLessThan(12);
    expect(found.reduce((sum, b) => sum + b.turnDeg, 0)).toBeCloseTo(75, 6);
    expect(found.map((b) => b.atMm)).toEqual([...found.map((b) => b.atMm)].sort((a, b) => a - b));
  });

  it('are tighter where the points turn more sharply', () => {
    const flat = curved([[0, 0], [100, 20], [200, 0]])[0]!; // prettier-ignore
    const sharp = curved([[0, 0], [100, 120], [200, 0]])[0]!; // prettier-ignore
    expect(sharp.radiusMm).toBeLessThan(flat.radiusMm / 2);
    expect(sharp.turnDeg).toBeGreaterThan(flat.turnDeg);
  });

  it('are none where the points lie on a line', () => {
    expect(curved([[0, 0], [100, 0], [300, 0]])).toEqual([]); // prettier-ignore
  });
});
