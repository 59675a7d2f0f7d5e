import { byId } from '../base/by-id';
import { reuseList } from '../base/same-fields';
import type { Node, Segment } from '../model/topology';
import { carriedRoutes } from './carried-routes';
import { segmentPath } from './formboard/segment-path';
import type { FoundRoute, Route, RouterState } from './router-state';
import { shortestTree, type Edge, type ShortestTree } from './shortest-tree';
import { treeWays, type TreeWays } from './tree-ways';

export type { Route };

export interface Router {
  /** The shortest way between two nodes. The same pair always gives the same object. */
  between(from: string | undefined, to: string | undefined): Route;
  /** Along the given segments, in order. */
  along(path: readonly string[], from: string | undefined, to: string | undefined): Route;
  lengthMmOf(segment: Segment): number;
  /**
   * Routes of the router before that do not hold any more, or that pass a segment of which something else changed. Null
   * where this one was not made from that one.
   */
  touchedSince(before: Router): ReadonlySet<Route> | null;
  /** How many ways it had to look for; those that were carried over do not count. */
  searches(): number;
}

const NO_NODE: Route = { found: false, reason: 'end-without-node' };
const NOT_CONNECTED: Route = { found: false, reason: 'not-connected' };
const PATH_BROKEN: Route = { found: false, reason: 'path-broken' };

/** Typed length, else the drawn one (mm). */
export const segmentLengthMm = (segment: Segment, nodes: ReadonlyMap<string, Node>): number =>
  segment.lengthMm ?? segmentPath(segment, nodes)?.lengthMm ?? 0;

const states = new WeakMap<Router, RouterState>();

/**
 * Shortest ways: where no loop is, the only one there is; else by one tree per start node, made when first asked for.
 * Given the router before, ways that an edit cannot have
 * changed are carried over; the answers never depend on it.
 */
export function createRouter(nodes: readonly Node[], segments: readonly Segment[], before?: Router): Router {
  const nodeById = byId(nodes);
  const index = new Map(nodes.map((n, i) => [n.id, i]));
  const lengths = segments.map((s) => segmentLengthMm(s, nodeById));
  const edges: Edge[][] = nodes.map(() => []);
  segments.forEach((s, k) => {
    const a = index.get(s.from);
    const b = index.get(s.to);
    if (a === undefined || b === undefined) return;
    edges[a]!.push({ to: b, segment: k });
    edges[b]!.push({ to: a, segment: k });
  });
  const trees = new Map<number, ShortestTree>();
  const treeFrom = (start: number): ShortestTree => {
    let tree = trees.get(start);
    if (!tree) trees.set(start, (tree = shortestTree(start, edges, lengths)));
    return tree;
  };

  const old = before && states.get(before);
  const carried = old && carriedRoutes(old, { nodes, segments, lengths, index, treeFrom });
  const shortest = carried?.shortest ?? new Map<string, FoundRoute>();
  const pinned = carried?.pinned ?? new Map<string, FoundRoute>();
  let searches = 0;
  let ways: TreeWays | undefined;

  function find(from: string, to: string): Route {
    searches++;
    const a = index.get(from);
    const b = index.get(to);
    if (a === undefined || b === undefined) return NO_NODE;
    ways ??= treeWays(edges);
    if (ways.oneWay(a, b)) {
      const way = ways.between(a, b);
      // Added up from the first node on, as a search does: the sum is the same to the last bit.
      const lengthMm = way.reduce((sum, k) => sum + lengths[k]!, 0);
      return { found: true, segments: way.map((k) => segments[k]!.id), lengthMm };
    }
    const tree = treeFrom(a);
    if (tree.distance[b] === Infinity) return NOT_CONNECTED;
    const way: string[] = [];
    for (let at = b; at !== a; at = tree.before[at]!) way.push(segments[tree.by[at]!]!.id);
    return { found: true, segments: way.reverse(), lengthMm: tree.distance[b]! };
  }

  function walk(path: readonly string[], from: string, to: string): Route {
    searches++;
    const known = byId(segments);
    if (!index.has(from) || !index.has(to)) return NO_NODE;
    let at = from;
    let lengthMm = 0;
    for (const id of path) {
      const s = known.get(id);
      if (!s || (s.from !== at && s.to !== at)) return PATH_BROKEN;
      at = s.from === at ? s.to : s.from;
      lengthMm += segmentLengthMm(s, nodeById);
    }
    return at === to ? { found: true, segments: path, lengthMm } : PATH_BROKEN;
  }

  type Known = 'shortest' | 'pinned';
  const tables = { shortest, pinned };
  const asked = (table: Known, key: string, look: () => Route): Route => {
    const known = tables[table].get(key);
    if (known) return known;
    const found = look();
    if (!found.found) return found;
    // A way that was looked for again and is the same stays the object that it was, and with it its wires.
    const was = old?.[table].get(key);
    const route =
      was?.lengthMm === found.lengthMm && reuseList(was.segments, found.segments) === was.segments
        ? was
        : found;
    tables[table].set(key, route);
    return route;
  };

  const router: Router = {
    between: (from, to) => (from && to ? asked('shortest', `${from} ${to}`, () => find(from, to)) : NO_NODE),
    along: (path, from, to) =>
      from && to ? asked('pinned', [from, ...path, to].join(' '), () => walk(path, from, to)) : NO_NODE,
    lengthMmOf: (segment) => segmentLengthMm(segment, nodeById),
    touchedSince: (other) => (carried && old === states.get(other) ? carried.touched : null),
    searches: () => searches,
  };
  states.set(router, { nodes, segments, lengths, shortest, pinned });
  return router;
}
