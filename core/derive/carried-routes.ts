import { byId } from '../base/by-id';
import type { Node, Segment } from '../model/topology';
import type { FoundRoute, Route, RouterState } from './router-state';
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
  const shortens = shorteningOf(better, now);
  const nodesStay = old.nodes === now.nodes || old.nodes.every((n) => now.index.has(n.id));
  const keep = (routes: ReadonlyMap<string, FoundRoute>, byLength: boolean): Map<string, FoundRoute> => {
    const asks = byLength && shortens !== null;
    if (wrong.size === 0 && edited.size === 0 && nodesStay && !asks) return new Map(routes);
    const out = new Map<string, FoundRoute>();
    for (const [key, route] of routes) {
      let holds = true;
      let isEdited = false;
      for (const s of route.segments) {
        if (wrong.has(s)) {
          holds = false;
          break;
        }
        isEdited ||= edited.has(s);
      }
      if (holds && (asks || !nodesStay)) {
        const from = now.index.get(key.slice(0, key.indexOf(' ')));
        const to = now.index.get(key.slice(key.lastIndexOf(' ') + 1));
        holds = from !== undefined && to !== undefined && !(asks && shortens(from, to, route.lengthMm));
      }
      if (holds) out.set(key, route);
      if (!holds || isEdited) touched.add(route);
    }
    return out;
  };
  return { shortest: keep(old.shortest, true), pinned: keep(old.pinned, false), touched };
}

/** Tells whether a new or shorter segment may give two nodes as short a way as they have; null where none can. */
function shorteningOf(
  better: readonly number[],
  now: Now,
): ((from: number, to: number, lengthMm: number) => boolean) | null {
  // In a tree there is one way from node to node, whatever its length.
  if (better.length === 0 || isForest(now)) return null;
  if (better.length > MANY) return () => true;
  const ways = better.map((i) => shortcut(i, now));
  return (from, to, lengthMm) => ways.some((way) => way(from, to) <= lengthMm * (1 + 1e-12) + 1e-9);
}

/** Whether no segments close a loop. */
function isForest({ nodes, segments, index }: Now): boolean {
  const parent = new Int32Array(nodes.length).map((_, i) => i);
  const root = (node: number): number => {
    let at = node;
    while (parent[at] !== at) at = parent[at] = parent[parent[at]!]!;
    return at;
  };
  for (const s of segments) {
    const [from, to] = [index.get(s.from), index.get(s.to)];
    if (from === undefined || to === undefined) continue;
    const [a, b] = [root(from), root(to)];
    if (a === b) return false;
    parent[b] = a;
  }
  return true;
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
