import { distance, type Point } from '@latchwork/core/base/point';
import type { Segment } from '@latchwork/core/model/topology';

/** A segment as it lies on the board, and what runs in it. */
export interface SegmentItem {
  readonly segment: Segment;
  readonly points: readonly Point[];
  /** Drawn length over its via points, mm. */
  readonly drawnMm: number;
  readonly lengthMm: number;
  readonly wires: number;
}

export const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + distance(points[i] as Point, p), 0);

/** A station on a segment: typed lengths are spread over the drawn line. */
export function pointAlong(s: SegmentItem, atMm: number): { readonly at: Point; readonly angle: number } {
  let left = s.lengthMm > 0 ? (atMm / s.lengthMm) * s.drawnMm : 0;
  for (let i = 1; i < s.points.length; i++) {
    const [a, b] = [s.points[i - 1] as Point, s.points[i] as Point];
    const d = distance(a, b);
    if (left <= d || i === s.points.length - 1) {
      const t = d === 0 ? 0 : Math.min(1, left / d);
      return {
        at: { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t },
        angle: Math.atan2(b.y - a.y, b.x - a.x),
      };
    }
    left -= d;
  }
  return { at: s.points[0] as Point, angle: 0 };
}
