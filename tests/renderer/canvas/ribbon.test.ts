import { expect, it } from 'vitest';
import { distanceTo, pointOn } from '../../../renderer/canvas/scene/curve';
import { ribbonCurves, singleCurve } from '../../../renderer/canvas/scene/ribbon';

const a = (y: number) => ({ x: 0, y, side: 1 as const });
const b = (y: number) => ({ x: 200, y, side: -1 as const });

it('leaves along the axis of the cavity at both ends', () => {
  const c = singleCurve(a(0), b(50));
  expect(c[3]).toBe(0);
  expect(c[5]).toBe(50);
  expect(c[2]).toBeGreaterThan(0);
  expect(c[4]).toBeLessThan(200);
});

it('gathers wires of the same two sides into lanes at one distance', () => {
  const curves = ribbonCurves([0, 6, 12].map((y) => ({ a: a(y), b: b(y) })));
  const middles = curves.map((c) => pointOn(c, 0.5).y);
  expect(middles[1]! - middles[0]!).toBeCloseTo(middles[2]! - middles[1]!, 6);
  expect(middles[1]! - middles[0]!).toBeLessThan(3);
  // The ends stay at their cavities.
  expect(curves.map((c) => c[1])).toEqual([0, 6, 12]);
});

it('answers in the order in which it was asked', () => {
  const curves = ribbonCurves([12, 0, 6].map((y) => ({ a: a(y), b: b(y) })));
  expect(curves.map((c) => c[1])).toEqual([12, 0, 6]);
});

it('measures how far a point is from a curve', () => {
  const straight = singleCurve(a(0), b(0));
  expect(distanceTo(straight, { x: 100, y: 7 })).toBeCloseTo(7, 6);
  expect(distanceTo(straight, { x: -3, y: 4 })).toBeCloseTo(5, 6);
});
