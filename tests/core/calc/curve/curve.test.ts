import { distance, type Point } from '@latchwork/core/base/point';
import {
  cubicCurvature,
  cubicLengthMm,
  cubicParameterAt,
  type Cubic,
} from '@latchwork/core/calc/curve/cubic';
import { drawnPath, placeOnPath, reversePath, subPath } from '@latchwork/core/calc/curve/drawn-path';
import { integrate } from '@latchwork/core/calc/curve/integrate';
import { nearestOnPath } from '@latchwork/core/calc/curve/nearest-on-path';
import { pathPoints } from '@latchwork/core/calc/curve/path-points';
import { smoothThrough } from '@latchwork/core/calc/curve/smooth-through';
import { tightestOnPath } from '@latchwork/core/calc/curve/tightest-on-path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const onCircle = (r: number, angle: number): Point => ({ x: r * Math.cos(angle), y: r * Math.sin(angle) });
const coordinate = fc.integer({ min: -500, max: 500 });
const point = fc.record({ x: coordinate, y: coordinate });
const points = fc
  .array(point, { minLength: 3, maxLength: 7 })
  .filter((list) => list.every((p, i) => i === 0 || distance(p, list[i - 1]!) > 5)) as fc.Arbitrary<
  [Point, ...Point[]]
>;

const turnDeg = (a: Point, b: Point, c: Point): number => {
  const turn = Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x);
  return (Math.acos(Math.cos(turn)) * 180) / Math.PI;
};

describe('the integral', () => {
  it('gives the perimeter of an ellipse: complete elliptic integral of the second kind, E(1/2) = 1.3506438810476755 (Abramowitz & Stegun, table 17.1)', () => {
    const quarter = integrate((t) => Math.sqrt(1 - 0.5 * Math.sin(t) ** 2), 0, Math.PI / 2, 1e-13);
    expect(quarter).toBeCloseTo(1.3506438810476755, 12);
  });

  it('finds what happens in a narrow place', () => {
    expect(integrate((x) => 1 / (1e-6 + x * x), -1, 1, 1e-9)).toBeCloseTo(2000 * Math.atan(1000), 6);
  });
});

describe('the length of a cubic', () => {
  // Closed form for y = a x² from 0 to b: s = (b/2) sqrt(1 + 4a²b²) + asinh(2ab)/(4a).
  it('of a parabola is that of the closed form', () => {
    const [a, b] = [0.01, 120];
    // The quadratic Bézier 0/0, b/2 / 0, b / ab², raised to a cubic.
    const q: Point[] = [
      { x: 0, y: 0 },
      { x: b / 2, y: 0 },
      { x: b, y: a * b * b },
    ];
    const between = (p: Point, r: Point): Point => ({
      x: p.x + ((r.x - p.x) * 2) / 3,
      y: p.y + ((r.y - p.y) * 2) / 3,
    });
    const curve: Cubic = [q[0]!, between(q[0]!, q[1]!), between(q[2]!, q[1]!), q[2]!];
    const closed = (b / 2) * Math.sqrt(1 + 4 * a * a * b * b) + Math.asinh(2 * a * b) / (4 * a);
    expect(cubicLengthMm(curve)).toBeCloseTo(closed, 8);
    // Curvature of the parabola at its vertex: 2a.
    expect(cubicCurvature(curve, 0)).toBeCloseTo(2 * a, 10);
    const t = cubicParameterAt(curve, closed / 3, closed);
    expect(cubicLengthMm(curve, 0, t)).toBeCloseTo(closed / 3, 7);
  });
});

describe('the curve through points', () => {
  it('is the Catmull–Rom curve of the pyramid of Barry and Goldman (SIGGRAPH 1988) with centripetal knots', () => {
    const list = [
      { x: 0, y: 0 },
      { x: 40, y: 10 },
      { x: 70, y: 80 },
      { x: 200, y: 60 },
    ];
    const knots = [0];
    list.slice(1).forEach((p, i) => knots.push(knots[i]! + Math.sqrt(distance(list[i]!, p))));
    const lerp = (a: Point, b: Point, s: number, u: number, v: number): Point => ({
      x: (a.x * (v - s) + b.x * (s - u)) / (v - u),
      y: (a.y * (v - s) + b.y * (s - u)) / (v - u),
    });
    const curve = smoothThrough(list)[1]!;
    for (const t of [0, 0.2, 0.5, 0.9, 1]) {
      const s = knots[1]! + t * (knots[2]! - knots[1]!);
      const a = [0, 1, 2].map((i) => lerp(list[i]!, list[i + 1]!, s, knots[i]!, knots[i + 1]!));
      const b = [0, 1].map((i) => lerp(a[i]!, a[i + 1]!, s, knots[i]!, knots[i + 2]!));
      const expected = lerp(b[0]!, b[1]!, s, knots[1]!, knots[2]!);
      const u = 1 - t;
      const w = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
      const got = {
        x: curve.reduce((sum, p, i) => sum + w[i]! * p.x, 0),
        y: curve.reduce((sum, p, i) => sum + w[i]! * p.y, 0),
      };
      expect(distance(got, expected)).toBeLessThan(1e-9);
    }
  });

  it('through points of an arc has its length (r times the angle) and its radius', () => {
    const arc = Array.from({ length: 33 }, (_, i) => onCircle(100, (Math.PI * i) / 32)) as [
      Point,
      ...Point[],
    ];
    const path = drawnPath(arc, 'curve');
    expect(Math.abs(path.lengthMm - 100 * Math.PI)).toBeLessThan(0.01);
    const inner = tightestOnPath(path, 50, 264)!;
    expect(Math.abs(inner.radiusMm - 100)).toBeLessThan(1.5);
  });

  it('has no corner: the direction before a point is that after it', () => {
    fc.assert(
      fc.property(points, (list) => {
        // A line that goes back the way it came has no direction at its turn.
        fc.pre(list.every((p, i) => i < 2 || turnDeg(list[i - 2]!, list[i - 1]!, p) < 170));
        const path = drawnPath(list, 'curve');
        let at = 0;
        for (const piece of path.pieces.slice(0, -1)) {
          at += piece.lengthMm;
          const [a, b] = [placeOnPath(path, at - 1e-7).angle, placeOnPath(path, at + 1e-7).angle];
          expect(Math.cos(a - b)).toBeGreaterThan(1 - 1e-6);
        }
      }),
      { numRuns: 60 },
    );
  }, 60_000);
});

describe.each(['straight', 'curve'] as const)('a %s path', (shape) => {
  it('starts and ends at its points and passes through those between', () => {
    fc.assert(
      fc.property(points, (list) => {
        const path = drawnPath(list, shape);
        expect(distance(placeOnPath(path, 0).at, list[0])).toBeLessThan(1e-9);
        expect(distance(placeOnPath(path, path.lengthMm).at, list.at(-1)!)).toBeLessThan(1e-6);
        for (const p of list) expect(nearestOnPath(path, p).distanceMm).toBeLessThan(1e-5);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('is as long as its parts, wherever it is cut, and they meet', () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (list, f) => {
        const path = drawnPath(list, shape);
        const [head, tail] = [
          subPath(path, 0, f * path.lengthMm),
          subPath(path, f * path.lengthMm, path.lengthMm),
        ];
        expect(head.lengthMm + tail.lengthMm).toBeCloseTo(path.lengthMm, 6);
        expect(distance(head.end, tail.start)).toBeLessThan(1e-6);
        expect(reversePath(path).lengthMm).toBe(path.lengthMm);
        expect(
          distance(placeOnPath(reversePath(path), 10).at, placeOnPath(path, path.lengthMm - 10).at),
        ).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('finds the nearest place: none of two hundred places on it is nearer', () => {
    fc.assert(
      fc.property(points, point, (list, p) => {
        const path = drawnPath(list, shape);
        const near = nearestOnPath(path, p);
        expect(distance(placeOnPath(path, near.atMm).at, near.at)).toBeLessThan(1e-5);
        for (let i = 0; i <= 200; i++)
          expect(distance(placeOnPath(path, (path.lengthMm * i) / 200).at, p)).toBeGreaterThan(
            near.distanceMm - 0.05,
          );
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('as straight runs stays within the tolerance of itself', () => {
    fc.assert(
      fc.property(points, (list) => {
        const path = drawnPath(list, shape);
        const plain = drawnPath(pathPoints(path, 0.1) as [Point, ...Point[]], 'straight');
        for (let i = 0; i <= 100; i++)
          expect(
            nearestOnPath(plain, placeOnPath(path, (path.lengthMm * i) / 100).at).distanceMm,
          ).toBeLessThan(0.1001);
      }),
      { numRuns: 40 },
    );
  }, 60_000);
});

it('a path of points on top of each other has no length and one place', () => {
  const p = { x: 3, y: 4 };
  const path = drawnPath([p, p], 'curve');
  expect([path.lengthMm, path.pieces.length]).toEqual([0, 0]);
  expect(placeOnPath(path, 5).at).toEqual(p);
  expect(nearestOnPath(path, { x: 0, y: 0 })).toMatchObject({ atMm: 0, distanceMm: 5 });
});
