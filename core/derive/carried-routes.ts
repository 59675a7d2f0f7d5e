import { byId } from '../base/by-id';
import type { Node, Segment } from '../model/topology';
import type { FoundRoute, Route, RouterState } from './route';
import type { ShortestTree } from './shortest-tree';

/** The board as it is now. */
interface Now {
  readonly nodes: readonly Node[];
  readonly segments: readonly Segment[];
  readonly lengths: readonly number[];
  readonly index: ReadonlyMap<string, number>;
  treeFrom(start: number): ShortestTree;
}

interface Carried {
  readonly shortest: Map<string, FoundRoute>;
  readonly pinned: Map<string, FoundRoute>;
  readonly touched: ReadonlySet<Route>;
}

/** More than this, and looking for all ways again costs less than asking for each. */
const MANY = 12;

/**
 * The routes that still hold. A way stands while its own segments keep their ends and lengths, and no segment that is new
 * or shorter gives one that is as short: for a segment from u to v that is d(from, u) + length + d(v, to), both ways round.
 */
export function carriedRoutes(old: RouterState, now: Now): Carried {
  const known = byId(old.segments);
  const oldLength = new Map(old.segments.map((s, i) => [s.id, old.lengths[i]!]));
  const wrong = new Set<string>();
  const edited = new Set<string>();
  const better: number[] = [];
  const still = byId(now.segments);
  for (const s of old.segments) if (!still.has(s.id)) wrong.add(s.id);
  now.segments.forEach((s, i) => {
    const was = known.get(s.id);
    const [before, after] = [oldLength.get(s.id), now.lengths[i]!];
    const sameEnds = was?.from === s.from && was.to === s.to;
    if (!was || before === undefined || !sameEnds || after < before) better.push(i);
    if (was && (!sameEnds || after !== before)) wrong.add(s.id);
    else if (was && was !== s) edited.add(s.id);
  });

  const touched = new Set<Route>();
  const shortcuts = better.length > MANY ? null : better.map((i) => shortcut(i, now));
  const isShorter = (from: number, to: number, lengthMm: number): boolean =>
    !shortcuts || shortcuts.some((way) => way(from, to) <= lengthMm * (1 + 1e-12) + 1e-9);
  const keep = (routes: ReadonlyMap<string, FoundRoute>, byLength: boolean): Map<string, FoundRoute> => {
    const out = new Map<string, FoundRoute>();
    for (const [key, route] of routes) {
      const from = now.index.get(key.slice(0, key.indexOf(' ')));
      const to = now.index.get(key.slice(key.lastIndexOf(' ') + 1));
      if (route.segments.some((s) => edited.has(s))) touched.add(route);
      const holds =
        from !== undefined &&
        to !== undefined &&
        !route.segments.some((s) => wrong.has(s)) &&
        !(byLength && better.length > 0 && isShorter(from, to, route.lengthMm));
      if (holds) out.set(key, route);
      else touched.add(route);
    }
    return out;
  };
  return { shortest: keep(old.shortest, true), pinned: keep(old.pinned, false), touched };
}

/** Length of the shortest way between two nodes that passes a segment. */
function shortcut(segment: number, now: Now): (from: number, to: number) => number {
  const { from, to } = now.segments[segment]!;
  const [u, v] = [now.index.get(from), now.index.get(to)];
  if (u === undefined || v === undefined) return () => Infinity;
  const own = now.lengths[segment]!;
  const [near, far] = [now.treeFrom(u).distance, now.treeFrom(v).distance];
  return (a, b) => own + Math.min(near[a]! + far[b]!, far[a]! + near[b]!);
}
