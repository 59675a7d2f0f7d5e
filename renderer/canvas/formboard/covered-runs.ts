import type { Point } from '@latchwork/core/base/point';
import type { Router } from '@latchwork/core/derive/route';
import type { Covering } from '@latchwork/core/model/topology';
import { pointAlong, type SegmentItem } from './segment-item';

/** The lines that a covering follows: a piece of one segment, or the ends of two and all segments between them. */
export function coveredRuns(
  { from, to }: Pick<Covering, 'from' | 'to'>,
  segments: ReadonlyMap<string, SegmentItem>,
  router: Router,
): readonly (readonly Point[])[] {
  const a = segments.get(from.segment);
  const b = segments.get(to.segment);
  if (!a || !b) return [];
  if (a === b) return [piece(a, from.atMm, to.atMm)];
  let best: { length: number; runs: (readonly Point[])[] } | null = null;
  for (const leave of [a.segment.from, a.segment.to])
    for (const enter of [b.segment.from, b.segment.to]) {
      const route = router.between(leave, enter);
      if (!route.found || route.segments.includes(from.segment) || route.segments.includes(to.segment))
        continue;
      const [outAt, inAt] = [
        leave === a.segment.from ? 0 : a.lengthMm,
        enter === b.segment.from ? 0 : b.lengthMm,
      ];
      const length = route.lengthMm + Math.abs(outAt - from.atMm) + Math.abs(inAt - to.atMm);
      if (best && best.length <= length) continue;
      const between = route.segments.flatMap((id) => segments.get(id)?.points ?? []);
      best = {
        length,
        runs: [piece(a, from.atMm, outAt), ...(between.length ? [between] : []), piece(b, inAt, to.atMm)],
      };
    }
  return best?.runs ?? [];
}

function piece(s: SegmentItem, fromMm: number, toMm: number): readonly Point[] {
  const steps = s.points.length > 2 ? 16 : 1;
  return Array.from(
    { length: steps + 1 },
    (_, i) => pointAlong(s, fromMm + ((toMm - fromMm) * i) / steps).at,
  );
}
