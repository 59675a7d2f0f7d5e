/** Distances and ways from one start to all others, by index. */
export interface ShortestTree {
  readonly distance: Float64Array;
  readonly before: Int32Array;
  readonly by: Int32Array;
}

/** A run between two places, from one of them. */
export interface Edge {
  readonly to: number;
  readonly segment: number;
}

/**
 * Dijkstra's method (Numerische Mathematik 1, 1959). Ties go to the segment that stands first, so results do not depend on
 * the order of questions.
 */
export function shortestTree(
  start: number,
  edges: readonly (readonly Edge[])[],
  lengths: readonly number[],
): ShortestTree {
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
