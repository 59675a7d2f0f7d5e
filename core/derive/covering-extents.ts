import type { Covering, Segment } from '../model/topology';
import { wayBetween, type Extent } from './formboard/way-between';
import type { Router } from './route';

export type { Extent };

/**
 * The stretches of a covering, segment by segment: from station to station on one segment, else the shortest way over the
 * nodes between two. None when no way joins the two.
 */
export const coveringExtents = (
  { from, to }: Covering,
  segments: ReadonlyMap<string, Segment>,
  router: Router,
): readonly Extent[] => wayBetween(from, to, segments, router)?.extents ?? [];
