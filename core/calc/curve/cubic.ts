import type { Point } from '../../base/point';
import { integrate } from './integrate';

/** A cubic Bézier curve, mm; parameter t from 0 to 1. */
export type Cubic = readonly [Point, Point, Point, Point];

const mix = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** The two halves of a curve cut at t (de Casteljau); they meet at the point of the curve there. */
export function cutCubic([a, b, c, d]: Cubic, t: number): readonly [Cubic, Cubic] {
  const [ab, bc, cd] = [mix(a, b, t), mix(b, c, t), mix(c, d, t)];
  const [abc, bcd] = [mix(ab, bc, t), mix(bc, cd, t)];
  const at = mix(abc, bcd, t);
  return [
    [a, ab, abc, at],
    [at, bcd, cd, d],
  ];
}

export function cubicPoint([a, b, c, d]: Cubic, t: number): Point {
  const u = 1 - t;
  const [p, q, r, s] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
  return { x: p * a.x + q * b.x + r * c.x + s * d.x, y: p * a.y + q * b.y + r * c.y + s * d.y };
}

/** First derivative by t, mm. */
export function cubicVelocity([a, b, c, d]: Cubic, t: number): Point {
  const u = 1 - t;
  const [p, q, r] = [3 * u * u, 6 * u * t, 3 * t * t];
  return {
    x: p * (b.x - a.x) + q * (c.x - b.x) + r * (d.x - c.x),
    y: p * (b.y - a.y) + q * (c.y - b.y) + r * (d.y - c.y),
  };
}

/** Signed curvature, 1/mm; 0 where the curve stands still. */
export function cubicCurvature(curve: Cubic, t: number): number {
  const [a, b, c, d] = curve;
  const v = cubicVelocity(curve, t);
  const accelerationOf = (k: 'x' | 'y'): number =>
    6 * (1 - t) * (c[k] - 2 * b[k] + a[k]) + 6 * t * (d[k] - 2 * c[k] + b[k]);
  const speed = Math.hypot(v.x, v.y);
  return speed < 1e-12 ? 0 : (v.x * accelerationOf('y') - v.y * accelerationOf('x')) / speed ** 3;
}

/** Far below what a formboard can show, and small against rounding to whole millimetres. */
const TOLERANCE_MM = 1e-9;

/** Arc length between two parameters, mm: the integral of the speed. */
export const cubicLengthMm = (curve: Cubic, from = 0, to = 1): number =>
  integrate(
    (t) => {
      const v = cubicVelocity(curve, t);
      return Math.hypot(v.x, v.y);
    },
    from,
    to,
    TOLERANCE_MM,
  );

/** The parameter up to which the curve is `alongMm` long: Newton's method, kept within a bracket. */
export function cubicParameterAt(curve: Cubic, alongMm: number, lengthMm: number): number {
  if (alongMm <= 0) return 0;
  if (alongMm >= lengthMm) return 1;
  let [low, high] = [0, 1];
  let t = alongMm / lengthMm;
  for (let i = 0; i < 60; i++) {
    const off = cubicLengthMm(curve, 0, t) - alongMm;
    if (Math.abs(off) < TOLERANCE_MM) return t;
    if (off > 0) high = t;
    else low = t;
    const v = cubicVelocity(curve, t);
    const next = t - off / Math.hypot(v.x, v.y);
    t = next > low && next < high ? next : (low + high) / 2;
  }
  return t;
}
