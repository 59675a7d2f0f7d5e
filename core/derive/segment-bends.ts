import { memoByIdentity } from '../base/memo-by-identity';
import { distance, type Point } from '../base/point';
import { placeOnPath, type DrawnPath } from '../calc/curve/drawn-path';
import { tightestOnPath } from '../calc/curve/tightest-on-path';
import { segmentPath } from './formboard/segment-path';
import type { SegmentUse } from './harness';

/** A bend of a segment, as drawn: at a via point of straight runs, or where a curve is tightest near one. */
export interface SegmentBend {
  /** Place of the bend along the segment, mm. */
  readonly atMm: number;
  readonly turnDeg: number;
  /** To the centre of the bundle, mm: of a corner the largest that the runs on both sides leave room for. */
  readonly radiusMm: number;
}

/** Bends below this are drawing, not bending. */
const STRAIGHT_DEG = 2;

/**
 * The bends of a segment. Where a typed length says that the drawing is not to scale, the drawn shape is stretched to it.
 * Plain geometry.
 */
export const bendsOf = memoByIdentity((use: SegmentUse): readonly SegmentBend[] => {
  const { segment, fromNode, toNode, lengthMm } = use;
  if (!segment.via?.length || !fromNode || !toNode) return [];
  const path = segmentPath(segment, new Map([fromNode, toNode].map((n) => [n.id, n])));
  if (!path || path.lengthMm === 0) return [];
  const scale = lengthMm / path.lengthMm;
  if (segment.shape === 'curve' && path.pieces.length > 1) return bendsOfCurve(path, scale);
  return bendsOfCorners([path.start, ...path.pieces.map((p) => p.to)], scale);
});

/** One for each point between, over the halves of the pieces on both sides: the tightest place of that stretch. */
function bendsOfCurve(path: DrawnPath, scale: number): readonly SegmentBend[] {
  const out: SegmentBend[] = [];
  let at = 0;
  for (let i = 1; i < path.pieces.length; i++) {
    const [before, after] = [path.pieces[i - 1]!, path.pieces[i]!];
    const start = i === 1 ? 0 : at + before.lengthMm / 2;
    at += before.lengthMm;
    const end = i === path.pieces.length - 1 ? path.lengthMm : at + after.lengthMm / 2;
    const tightest = tightestOnPath(path, start, end);
    const turnDeg = turned(path, start, at) + turned(path, at, end);
    if (tightest && turnDeg >= STRAIGHT_DEG)
      out.push({ atMm: tightest.atMm * scale, turnDeg, radiusMm: tightest.radiusMm * scale });
  }
  return out;
}

/** Degrees by which the direction changes between two places less than a half turn apart. */
function turned(path: DrawnPath, fromMm: number, toMm: number): number {
  const by = placeOnPath(path, toMm).angle - placeOnPath(path, fromMm).angle;
  return (Math.abs(Math.atan2(Math.sin(by), Math.cos(by))) * 180) / Math.PI;
}

/**
 * An arc of radius R around a corner that turns by t takes R tan(t/2) of the run on either side; a run between two bends is
 * shared by halves.
 */
function bendsOfCorners(points: readonly Point[], scale: number): readonly SegmentBend[] {
  const legs = points.slice(1).map((p, i) => distance(points[i]!, p));
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
}

/** By how much the way turns at `b`, 0 (straight on) to 180 degrees (back). */
function turnDeg(a: Point, b: Point, c: Point): number {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.abs((Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI);
}
