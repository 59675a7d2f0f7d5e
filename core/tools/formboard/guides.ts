import { distance, type Point } from '../../base/point';
import { snapped } from '../snap';
import { ANGLE_STEP_DEG, directionDeg } from './angle-snap';

/** A line that what is dragged has come to lie on: drawn while it does. */
export interface Guide {
  readonly from: Point;
  readonly to: Point;
  /** Same x, same y, or a ray from a neighbour in a round angle. */
  readonly kind: 'x' | 'y' | 'ray';
}

export interface Guided {
  readonly at: Point;
  readonly guides: readonly Guide[];
}

/** Lengths along a ray snap to this step, mm. */
const LENGTH_STEP_MM = 5;

/**
 * Where a dragged point comes to lie: level with other points, on a ray of 15 degrees from a neighbour with a round length, or
 * on the grid; whichever is nearest within reach.
 */
export function guided(
  raw: Point,
  neighbours: readonly Point[],
  others: readonly Point[],
  reachMm: number,
): Guided {
  const x = level(raw, others, 'x', reachMm);
  const y = level(raw, others, 'y', reachMm);
  if (x && y)
    return {
      at: { x: x.x, y: y.y },
      guides: [
        { kind: 'x', from: x, to: { x: x.x, y: y.y } },
        { kind: 'y', from: y, to: { x: x.x, y: y.y } },
      ],
    };
  const ray = onRay(raw, neighbours, reachMm);
  const grid = snapped(raw, true);
  if (
    ray &&
    (!x || distance(raw, ray.to) < Math.abs(raw.x - x.x)) &&
    (!y || distance(raw, ray.to) < Math.abs(raw.y - y.y))
  )
    return { at: ray.to, guides: [ray] };
  if (x) return { at: { x: x.x, y: grid.y }, guides: [{ kind: 'x', from: x, to: { x: x.x, y: grid.y } }] };
  if (y) return { at: { x: grid.x, y: y.y }, guides: [{ kind: 'y', from: y, to: { x: grid.x, y: y.y } }] };
  return { at: grid, guides: [] };
}

/** The point that is level with `raw` within reach; of several equally level ones the nearest. */
function level(raw: Point, others: readonly Point[], axis: 'x' | 'y', reachMm: number): Point | undefined {
  let best: Point | undefined;
  let least = [reachMm, Infinity];
  for (const p of others) {
    const off = [Math.abs(p[axis] - raw[axis]), distance(p, raw)] as const;
    if (off[0] > reachMm) continue;
    const [a = 0, b = 0] = least;
    if (off[0] < a - 1e-6 || (Math.abs(off[0] - a) <= 1e-6 && off[1] < b)) {
      best = p;
      least = [...off];
    }
  }
  return best;
}

function onRay(raw: Point, neighbours: readonly Point[], reachMm: number): Guide | undefined {
  let best: Guide | undefined;
  let least = reachMm;
  for (const from of neighbours) {
    const far = distance(from, raw);
    if (far < LENGTH_STEP_MM) continue;
    const angle = (Math.round(directionDeg(from, raw) / ANGLE_STEP_DEG) * ANGLE_STEP_DEG * Math.PI) / 180;
    const long = Math.round(far / LENGTH_STEP_MM) * LENGTH_STEP_MM;
    const on = { x: from.x + Math.cos(angle) * far, y: from.y + Math.sin(angle) * far };
    const off = distance(raw, on);
    if (off > least) continue;
    least = off;
    const at = (k: 'x' | 'y'): number =>
      Math.round((from[k] + (k === 'x' ? Math.cos(angle) : Math.sin(angle)) * long) * 1e6) / 1e6;
    best = { kind: 'ray', from, to: { x: at('x'), y: at('y') } };
  }
  return best;
}
