import { byId } from '../base/by-id';
import type { Node, Segment } from '../model/topology';
import { segmentPath } from './formboard/segment-path';

/** The way of a wire over the formboard, or why there is none. */
export type Route =
  | { readonly found: true; readonly segments: readonly string[]; readonly lengthMm: number }
  | { readonly found: false; readonly reason: 'end-without-node' | 'not-connected' | 'path-broken' };

export interface Router {
  /** The shortest way between two nodes. The same pair always gives the same object. */
  between(from: string | undefined, to: string | undefined): Route;
  /** Along the given segments, in order. */
  along(path: readonly string[], from: string | undefined, to: string | undefined): Route;
  lengthMmOf(segment: Segment): number;
}

const NO_NODE: Route = { found: false, reason: 'end-without-node' };
const NOT_CONNECTED: Route = { found: false, reason: 'not-connected' };
const PATH_BROKEN: Route = { found: false, reason: 'path-broken' };

/** Typed length, else the drawn one (mm). */
export const segmentLengthMm = (segment: Segment, nodes: ReadonlyMap<string, Node>): number =>
  segment.lengthMm ?? segmentPath(segment, nodes)?.lengthMm ?? 0;

/**
 * Shortest ways by Dijkstra's method (Numerische Mathematik 1, 1959), one tree per start node, made when first
 * asked for. Ties go to the segment that stands first in the project, so results do not depend on the order of questions.
 */
export function createRouter(nodes: readonly Node[], segments: readonly Segment[]): Router {
  const nodeById = byId(nodes);
  const index = new Map(nodes.map((n, i) => [n.id, i]));
  const lengths = segments.map((s) => segmentLengthMm(s, nodeById));
  const edges: { to: number; segment: number }[][] = nodes.map(() => []);
  segments.forEach((s, k) => {
    const a = index.get(s.from);
    const b = index.get(s.to);
    if (a === undefined || b === undefined) return;
    edges[a]!.push({ to: b, segment: k });
    edges[b]!.push({ to: a, segment: k });
  });
  const trees = new Map<number, Tree>();
  const routes = new Map<string, Route>();

  function treeFrom(start: number): Tree {
    let tree = trees.get(start);
    if (!tree) trees.set(start, (tree = shortestTree(start, edges, lengths)));
    return tree;
  }

  function find(from: string, to: string): Route {
    const a = index.get(from);
    const b = index.get(to);
    if (a === undefined || b === undefined) return NO_NODE;
    const tree = treeFrom(a);
    if (tree.distance[b] === Infinity) return NOT_CONNECTED;
    const way: string[] = [];
    for (let at = b; at !== a; at = tree.before[at]!) way.push(segments[tree.by[at]!]!.id);
    return { found: true, segments: way.reverse(), lengthMm: tree.distance[b]! };
  }

  return {
    between(from, to) {
      if (!from || !to) return NO_NODE;
      const key = `${from} ${to}`;
      let route = routes.get(key);
      if (!route) routes.set(key, (route = find(from, to)));
      return route;
    },
    along(path, from, to) {
      if (!from || !to) return NO_NODE;
      const key = [from, ...path, to].join(' ');
      let route = routes.get(key);
      if (!route) routes.set(key, (route = walk(path, from, to)));
      return route;
    },
    lengthMmOf: (segment) => segmentLengthMm(segment, nodeById),
  };

  function walk(path: readonly string[], from: string, to: string): Route {
    const known = byId(segments);
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
}

interface Tree {
  readonly distance: Float64Array;
  readonly before: Int32Array;
  readonly by: Int32Array;
}

function shortestTree(
  start: number,
  edges: readonly { to: number; segment: number }[][],
  lengths: readonly number[],
): Tree {
  const n = edges.length;
  const dist = new Float64Array(n).fill(Infinity);
  const before = new Int32Array(n).fill(-1);
  const by = new Int32Array(n).fill(-1);
  const heap: { node: number; at: number }[] = [{ node: start, at: 0 }];
  dist[start] = 0;
  for (let top = pop(heap); top; top = pop(heap)) {
    if (top.at > dist[top.node]!) continue;
    for (const e of edges[top.node]!) {
      const d = top.at + lengths[e.segment]!;
      if (d < dist[e.to]! || (d === dist[e.to]! && lengths[e.segment]! > 0 && e.segment < by[e.to]!)) {
        const shorter = d < dist[e.to]!;
        dist[e.to] = d;
        before[e.to] = top.node;
        by[e.to] = e.segment;
        if (shorter) push(heap, { node: e.to, at: d });
      }
    }
  }
  return { distance: dist, before, by };
}

type Entry = { node: number; at: number };

function push(heap: Entry[], entry: Entry): void {
  let i = heap.push(entry) - 1;
  while (i > 0) {
    const parent = (i - 1) >> 1;
    if (heap[parent]!.at <= entry.at) break;
    heap[i] = heap[parent]!;
    i = parent;
  }
  heap[i] = entry;
}

function pop(heap: Entry[]): Entry | undefined {
  const top = heap[0];
  const last = heap.pop();
  if (!top || !last || heap.length === 0) return top;
  let i = 0;
  for (;;) {
    let child = 2 * i + 1;
    if (child >= heap.length) break;
    if (child + 1 < heap.length && heap[child + 1]!.at < heap[child]!.at) child++;
    if (heap[child]!.at >= last.at) break;
    heap[i] = heap[child]!;
    i = child;
  }
  heap[i] = last;
  return top;
}
