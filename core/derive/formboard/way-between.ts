import type { Segment, Station } from '../../model/topology';
import type { Router } from '../route';

/** What of a segment a way or a covering lies on, mm from the start of the segment. */
export interface Extent {
  readonly segment: string;
  readonly fromMm: number;
  readonly toMm: number;
}

/** A place of the harness: a node, or a station of a segment. */
export type Place = { readonly node: string } | Station;

/** A way along the harness, stretch by stretch. */
export interface Way {
  readonly lengthMm: number;
  readonly extents: readonly Extent[];
}

interface Exit {
  readonly node: string;
  readonly stretch: Extent | undefined;
}

/**
 * The shortest way along the harness between two places; two of one segment are joined along it. Undefined where nothing
 * joins them, or one of them is not there. A station behind the end of its segment counts as the end.
 */
export function wayBetween(
  from: Place,
  to: Place,
  segments: ReadonlyMap<string, Segment>,
  router: Router,
): Way | undefined {
  if ('segment' in from && 'segment' in to && from.segment === to.segment) {
    const s = segments.get(from.segment);
    if (!s) return undefined;
    const lengthMm = router.lengthMmOf(s);
    const [a, b] = [from.atMm, to.atMm].map((mm) => Math.min(mm, lengthMm)) as [number, number];
    const extent = { segment: s.id, fromMm: Math.min(a, b), toMm: Math.max(a, b) };
    return { lengthMm: extent.toMm - extent.fromMm, extents: [extent] };
  }
  let best: Way | undefined;
  for (const leave of exitsOf(from, segments, router))
    for (const enter of exitsOf(to, segments, router)) {
      const way = router.between(leave.node, enter.node);
      if (!way.found) continue;
      const lengthMm = lengthOf(leave.stretch) + way.lengthMm + lengthOf(enter.stretch);
      if (best && best.lengthMm <= lengthMm) continue;
      const between = way.segments.map((id) => {
        const s = segments.get(id);
        return { segment: id, fromMm: 0, toMm: s ? router.lengthMmOf(s) : 0 };
      });
      const all = [leave.stretch, ...between, enter.stretch].filter((e) => e !== undefined);
      const long = all.filter((e) => lengthOf(e) > 0);
      best = { lengthMm, extents: long.length > 0 ? long : all };
    }
  return best;
}

/** Nodes by which a place is left, with the stretch from it to there. */
function exitsOf(place: Place, segments: ReadonlyMap<string, Segment>, router: Router): readonly Exit[] {
  if ('node' in place) return [{ node: place.node, stretch: undefined }];
  const s = segments.get(place.segment);
  if (!s) return [];
  const lengthMm = router.lengthMmOf(s);
  const atMm = Math.min(place.atMm, lengthMm);
  return [
    { node: s.from, stretch: { segment: s.id, fromMm: 0, toMm: atMm } },
    { node: s.to, stretch: { segment: s.id, fromMm: atMm, toMm: lengthMm } },
  ];
}

const lengthOf = (e: Extent | undefined): number => (e ? e.toMm - e.fromMm : 0);
