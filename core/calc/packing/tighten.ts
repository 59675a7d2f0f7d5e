import { trueUp, type Arrangement } from './arrangement';
import { minimise, type Objective } from './minimise';
import { nearPairs } from './near-pairs';

/** How hard the ring pulls in, from coarse to fine, in units of the root mean square radius. */
const COARSE = [0.3, 0.03, 0.003] as const;
const FINE = [1e-4, 1e-6, 1e-8] as const;

/**
 * Tightens an arrangement: a ring of radius R pulls in while overlaps push out,
 *
 *     E = pull x R + sum over pairs of overlap^2 + sum over circles of (what stands out of the ring)^2,
 *
 * with the pull made ever weaker, so that the overlaps vanish and R settles at a local minimum (penalty method: Nocedal
 * and Wright, Numerical Optimization, 2nd edition, section 17.1). Radii are near 1.
 */
export function tighten(
  start: Arrangement,
  stepsEach: number,
  fine: boolean,
): { readonly xy: Float64Array; readonly radius: number } {
  const n = start.radii.length;
  const first = trueUp(start);
  const at = new Float64Array(2 * n + 1);
  at.set(start.xy);
  at[2 * n] = first.radius;
  for (const pull of fine ? FINE : COARSE) {
    // Pairs are looked up anew now and then, since circles that were far apart may have come close.
    const rounds = n <= 40 ? 1 : 3;
    for (let round = 0; round < rounds; round++) {
      const xy = at.subarray(0, 2 * n);
      const pairs = nearPairs({ radii: start.radii, xy }, n <= 40 ? Infinity : 1.2);
      minimise(at, pressure(start.radii, pairs, pull), Math.ceil(stepsEach / rounds), fine ? 1e-11 : 1e-7);
    }
  }
  const settled = trueUp({ radii: start.radii, xy: at.slice(0, 2 * n) });
  return settled.radius < first.radius ? settled : first;
}

function pressure(radii: Float64Array, pairs: Int32Array, pull: number): Objective {
  const n = radii.length;
  return (at, gradient) => {
    gradient.fill(0);
    const ring = at[2 * n]!;
    let energy = pull * ring;
    let ringPush = pull;
    for (let p = 0; p < pairs.length; p += 2) {
      const i = pairs[p]!;
      const k = pairs[p + 1]!;
      const dx = at[2 * i]! - at[2 * k]!;
      const dy = at[2 * i + 1]! - at[2 * k + 1]!;
      const reach = radii[i]! + radii[k]!;
      const square = dx * dx + dy * dy;
      if (square >= reach * reach) continue;
      const distance = Math.sqrt(square) || 1e-9;
      const overlap = reach - distance;
      energy += overlap * overlap;
      const push = (-2 * overlap) / distance;
      gradient[2 * i]! += push * dx;
      gradient[2 * i + 1]! += push * dy;
      gradient[2 * k]! -= push * dx;
      gradient[2 * k + 1]! -= push * dy;
    }
    for (let i = 0; i < n; i++) {
      const x = at[2 * i]!;
      const y = at[2 * i + 1]!;
      const room = ring - radii[i]!;
      const square = x * x + y * y;
      if (room > 0 && square <= room * room) continue;
      const distance = Math.sqrt(square) || 1e-9;
      const out = distance - room;
      energy += out * out;
      ringPush -= 2 * out;
      gradient[2 * i]! += (2 * out * x) / distance;
      gradient[2 * i + 1]! += (2 * out * y) / distance;
    }
    gradient[2 * n] = ringPush;
    return energy;
  };
}
