import { memoByIdentity } from '../base/memo-by-identity';
import { distance, type Point } from '../base/point';
import type { SegmentUse } from './harness';

/** A bend at a via point of a segment, as drawn. */
export interface SegmentBend {
  /** Place of the corner along the segment, mm. */
  readonly atMm: number;
  readonly turnDeg: number;
  /** Largest radius to the centre of the bundle that the straight runs on both sides leave room for, mm. */
  readonly radiusMm: number;
}

/** Corners below this are drawing, not bending. */
const STRAIGHT_DEG = 2;

/**
 * The bends of a segment. An arc of radius R around a corner that turns by t takes R tan(t/2) of the run on either side; a
 * run between two bends is shared by halves. Where a typed length says that the drawing is not to scale, the drawn shape is
 * stretched to it. Plain geometry.
 */
export const bendsOf = memoByIdentity((use: SegmentUse): readonly SegmentBend[] => {
  const { segment, fromNode, toNode, lengthMm } = use;
  if (!segment.via?.length || !fromNode || !toNode) return [];
  const points = [fromNode.position, ...segment.via, toNode.position].filter(
    (p, i, all) => i === 0 || distance(p, all[i - 1]!) > 1e-9,
  );
  const legs = points.slice(1).map((p, i) => distance(points[i]!, p));
  const drawnMm = legs.reduce((a, b) => a + b, 0);
  if (drawnMm === 0) return [];
  const scale = lengthMm / drawnMm;
  const turns = legs.map((_, i) => (i === 0 ? 0 : turnDeg(points[i - 1]!, points[i]!, points[i + 1]!)));
  const bent = (i: number): boolean => (turns[i] ?? 0) >= STRAIGHT_DEG;
  const out: SegmentBend[] = [];
  let atMm = 0;
  for (let i = 1; i < legs.length; i++) {
    atMm += legs[i - 1]! * scale;
    if (!bent(i)) continue;
    const before = legs[i - 1]! * (bent(i - 1) ? 0.5 : 1);
    const after = legs[i]! * (bent(i + 1) ? 0.5 : 1);
    const tangent = Math.tan((turns[i]! * Math.PI) / 360);
    out.push({ atMm, turnDeg: turns[i]!, radiusMm: (Math.min(before, after) * scale) / tangent });
  }
  return out;
});

/** By how much the way turns at `b`, 0 (straight on) to 180 degrees (back). */
function turnDeg(a: Point, b: Point, c: Point): number {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.abs((Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI);
}
