import type { Arrangement } from './arrangement';
import { seededSequence } from './seeded-sequence';
import { curvedHexagon, lattice, LATTICE_CENTRES, sunflower } from './starts';
import { tighten } from './tighten';

export interface PackedCircle {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** Circles in a round hole, in the order in which their radii were given; the hole's centre is the origin. */
export interface Packing {
  readonly radius: number;
  readonly circles: readonly PackedCircle[];
}

type Settled = ReturnType<typeof tighten>;

/**
 * Packs circles of given radii into a small round hole. No two overlap and none stands out, to the last bits of the
 * arithmetic; the hole is not proved to be the smallest, so it is an upper bound. One and two circles are exact; up to 61
 * equal circles come within 1 % of the best packings known. The same radii give the same hole, whatever their order.
 * Radii greater than zero.
 */
export function packCircles(given: readonly number[]): Packing {
  const order = given.map((_, i) => i).sort((a, b) => given[b]! - given[a]! || a - b);
  const n = given.length;
  if (n === 0) return { radius: 0, circles: [] };
  const [first = 0, second = 0] = order.map((i) => given[i]!);
  if (n === 1) return { radius: first, circles: [{ x: 0, y: 0, r: first }] };
  const scale = Math.sqrt(order.reduce((sum, i) => sum + given[i]! ** 2, 0) / n);
  const radii = Float64Array.from(order, (i) => given[i]! / scale);
  const best = n === 2 ? sideBySide(radii) : search(radii, (first + second) / scale);
  const circles: PackedCircle[] = Array.from(given, (r) => ({ x: 0, y: 0, r }));
  order.forEach((i, place) => {
    circles[i] = { x: best.xy[2 * place]! * scale, y: best.xy[2 * place + 1]! * scale, r: given[i]! };
  });
  return { radius: best.radius * scale, circles };
}

const sideBySide = (radii: Float64Array): Settled => ({
  xy: Float64Array.from([-radii[1]!, 0, radii[0]!, 0]),
  radius: radii[0]! + radii[1]!,
});

/** Tries fall with the number of circles, so that large bundles stay fast and small ones are searched well. */
const triesFor = (n: number): number => Math.min(6, Math.floor(250 / n));

/** Radii are sorted, largest first, with a root mean square of 1. No hole is below `least`. */
function search(radii: Float64Array, least: number): Settled {
  const n = radii.length;
  const chance = seededSequence(n);
  const stepsEach = n > 150 ? 90 : 150;
  const tries = triesFor(n);
  let best: Settled | undefined;
  const attempt = (start: Arrangement): void => {
    const settled = tighten(start, stepsEach, false);
    if (!best || settled.radius < best.radius) best = settled;
  };
  for (const start of startsOf(radii)) attempt(start);
  for (let k = 0; k < tries; k++) attempt(disturbed(radii, best!, chance));
  const fine = tighten({ radii, xy: best!.xy }, (n > 150 ? 1 : 3) * stepsEach, true);
  const result = fine.radius < best!.radius ? fine : best!;
  return result.radius < least ? { ...result, radius: least } : result;
}

function startsOf(radii: Float64Array): Arrangement[] {
  const n = radii.length;
  const order = Array.from(radii, (_, i) => i);
  const mixed = order.map((i) => (i % 2 ? n - 1 - (i >> 1) : i >> 1));
  const spirals = [sunflower(radii, order, 0.8)];
  if (n <= 150) spirals.push(sunflower(radii, [...order].reverse(), 0.8), sunflower(radii, mixed, 0.8));
  const equal = radii[0]! - radii[n - 1]! < 1e-9;
  return equal
    ? [...LATTICE_CENTRES.map((c) => lattice(radii, c)), curvedHexagon(radii), ...spirals]
    : spirals;
}

/** The best so far with everything shaken and one circle put elsewhere, or two of unlike size exchanged. */
function disturbed(radii: Float64Array, best: Settled, chance: () => number): Arrangement {
  const n = radii.length;
  const xy = best.xy.slice();
  const shake = 0.6 * chance();
  for (let i = 0; i < 2 * n; i++) xy[i] = xy[i]! + shake * (chance() - 0.5);
  const moves = 1 + Math.floor(chance() * 2);
  for (let m = 0; m < moves; m++) {
    const i = Math.floor(chance() * n);
    const k = Math.floor(chance() * n);
    if (radii[i] !== radii[k]) {
      [xy[2 * i], xy[2 * k]] = [xy[2 * k]!, xy[2 * i]!];
      [xy[2 * i + 1], xy[2 * k + 1]] = [xy[2 * k + 1]!, xy[2 * i + 1]!];
    } else {
      const angle = 2 * Math.PI * chance();
      const out = best.radius * Math.sqrt(chance());
      xy[2 * i] = out * Math.cos(angle);
      xy[2 * i + 1] = out * Math.sin(angle);
    }
  }
  return { radii, xy };
}
