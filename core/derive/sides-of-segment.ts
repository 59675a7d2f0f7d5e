import type { Segment } from '../model/topology';

/** Nodes on either side of a segment when it is cut; null where another way joins its ends: a closed loop. */
export function sidesOfSegment(
  segment: Segment,
  segments: readonly Segment[],
): readonly [ReadonlySet<string>, ReadonlySet<string>] | null {
  const next = new Map<string, string[]>();
  for (const s of segments) {
    if (s.id === segment.id) continue;
    next.set(s.from, [...(next.get(s.from) ?? []), s.to]);
    next.set(s.to, [...(next.get(s.to) ?? []), s.from]);
  }
  const from = reached(segment.from, next);
  return from.has(segment.to) ? null : [from, reached(segment.to, next)];
}

function reached(start: string, next: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const seen = new Set([start]);
  const open = [start];
  for (let node = open.pop(); node !== undefined; node = open.pop())
    for (const n of next.get(node) ?? [])
      if (!seen.has(n)) {
        seen.add(n);
        open.push(n);
      }
  return seen;
}
