import type { Edge } from './shortest-tree';

/** The ways within those parts of a board that have no loop: there is one between any two nodes, whatever the lengths. */
export interface TreeWays {
  /** Whether both lie in one part, and no segments close a loop in it. */
  oneWay(a: number, b: number): boolean;
  /** Segments of the way between two nodes of such a part, from the first on. */
  between(a: number, b: number): readonly number[];
}

/** Every part hung up at the first of its nodes. Nodes and segments by index. */
export function treeWays(edges: readonly (readonly Edge[])[]): TreeWays {
  const part = new Int32Array(edges.length).fill(-1);
  const parent = new Int32Array(edges.length).fill(-1);
  const by = new Int32Array(edges.length).fill(-1);
  const depth = new Int32Array(edges.length);
  const isTree: boolean[] = [];
  for (let root = 0; root < edges.length; root++) {
    if (part[root] !== -1) continue;
    const id = isTree.push(true) - 1;
    part[root] = id;
    const found = [root];
    for (const node of found)
      for (const { to, segment } of edges[node]!) {
        if (segment === by[node]) continue;
        if (part[to] !== -1) {
          isTree[id] = false;
          continue;
        }
        part[to] = id;
        parent[to] = node;
        by[to] = segment;
        depth[to] = depth[node]! + 1;
        found.push(to);
      }
  }

  return {
    oneWay: (a, b) => part[a] === part[b] && isTree[part[a]!]!,
    between(a, b) {
      const up: number[] = [];
      const down: number[] = [];
      let [from, to] = [a, b];
      while (from !== to)
        if (depth[from]! >= depth[to]!) {
          up.push(by[from]!);
          from = parent[from]!;
        } else {
          down.push(by[to]!);
          to = parent[to]!;
        }
      return [...up, ...down.reverse()];
    },
  };
}
