import type { Covering, Segment } from '../model/topology';
import type { Router } from './route';

/** What of a segment a covering lies on, mm from the start of the segment. */
export interface Extent {
  readonly segment: string;
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * The stretches of a covering, segment by segment: from station to station on one segment, else the shortest way over the
 * nodes between two. None when no way joins the two.
 */
export function coveringExtents(
  { from, to }: Covering,
  segments: ReadonlyMap<string, Segment>,
  router: Router,
): readonly Extent[] {
  const a = segments.get(from.segment);
  const b = segments.get(to.segment);
  if (!a || !b) return [];
  const [aMm, bMm] = [router.lengthMmOf(a), router.lengthMmOf(b)];
  const [fromMm, toMm] = [Math.min(from.atMm, aMm), Math.min(to.atMm, bMm)];
  if (a === b) return [{ segment: a.id, fromMm: Math.min(fromMm, toMm), toMm: Math.max(fromMm, toMm) }];

  let best: { readonly lengthMm: number; readonly extents: readonly Extent[] } | undefined;
  for (const leave of [a.from, a.to])
    for (const enter of [b.from, b.to]) {
      const way = router.between(leave, enter);
      if (!way.found) continue;
      const first = stretch(a, leave, fromMm, aMm);
      const last = stretch(b, enter, toMm, bMm);
      const lengthMm = lengthOf(first) + way.lengthMm + lengthOf(last);
      if (best && best.lengthMm <= lengthMm) continue;
      const between = way.segments.map((id) => {
        const s = segments.get(id);
        return { segment: id, fromMm: 0, toMm: s ? router.lengthMmOf(s) : 0 };
      });
      best = { lengthMm, extents: [first, ...between, last] };
    }
  return best?.extents ?? [];
}

/** From a station to the end of the segment at a node. */
const stretch = (s: Segment, node: string, atMm: number, lengthMm: number): Extent =>
  node === s.from
    ? { segment: s.id, fromMm: 0, toMm: atMm }
    : { segment: s.id, fromMm: atMm, toMm: lengthMm };

const lengthOf = (e: Extent): number => e.toMm - e.fromMm;
