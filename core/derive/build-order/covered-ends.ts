import { byId } from '../../base/by-id';
import type { Segment } from '../../model/topology';
import { coveringExtents } from '../covering-extents';
import type { Harness, ResolvedWire } from '../harness';

/** End of a wire: 0 the `from` end, 1 the `to` end. */
export interface WireEndAt {
  readonly wire: ResolvedWire;
  readonly end: 0 | 1;
}

/** Wires that run through a place of the harness, each with the end that lies on either side of it. */
export type Sides = readonly [readonly WireEndAt[], readonly WireEndAt[]];

/** The ends on both sides of what encloses a stretch of segments. */
export function sidesOf(harness: Harness, stretch: readonly Segment[]): Sides {
  const entry = entryNodes(stretch);
  const sides: [WireEndAt[], WireEndAt[]] = [[], []];
  for (const wire of harness.wires) {
    let node = wire.from.node;
    for (const s of wire.segments) {
      const next = s.from === node ? s.to : s.from;
      const at = entry.get(s.id);
      if (at !== undefined) {
        // Where the wire enters as the stretch begins, its `from` end lies on the near side.
        const near = node === at ? 0 : 1;
        sides[0].push({ wire, end: near });
        sides[1].push({ wire, end: near === 0 ? 1 : 0 });
        break;
      }
      node = next;
    }
  }
  return sides;
}

/** The node at which each segment of a stretch is entered when it is followed from its first to its last. */
function entryNodes(stretch: readonly Segment[]): ReadonlyMap<string, string> {
  const out = new Map<string, string>();
  stretch.forEach((s, i) => {
    const before = stretch[i - 1];
    const after = stretch[i + 1];
    if (before) out.set(s.id, touches(before, s.from) ? s.from : s.to);
    else if (after) out.set(s.id, touches(after, s.to) ? s.from : s.to);
    else out.set(s.id, s.from);
  });
  return out;
}

const touches = (s: Segment, node: string): boolean => s.from === node || s.to === node;

/** Segments that a covering lies on, in their order. */
export function stretchOf(
  harness: Harness,
  covering: Harness['project']['coverings'][number],
): readonly Segment[] {
  const segments = byId(harness.project.segments);
  return coveringExtents(covering, segments, harness.router).flatMap((e) => segments.get(e.segment) ?? []);
}
