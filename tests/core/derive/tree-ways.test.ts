import fc from 'fast-check';
import { expect, it } from 'vitest';
import { shortestTree, type Edge } from '@latchwork/core/derive/shortest-tree';
import { treeWays } from '@latchwork/core/derive/tree-ways';

interface Board {
  readonly edges: readonly (readonly Edge[])[];
  readonly lengths: readonly number[];
}

function boardOf(nodes: number, runs: readonly (readonly [number, number, number])[]): Board {
  const edges: Edge[][] = Array.from({ length: nodes }, () => []);
  runs.forEach(([a, b], segment) => {
    edges[a]!.push({ to: b, segment });
    edges[b]!.push({ to: a, segment });
  });
  return { edges, lengths: runs.map(([, , mm]) => mm) };
}

/** Runs between any nodes of ten; loops, double runs and runs that end where they begin among them. */
const board = fc
  .array(fc.tuple(fc.nat(9), fc.nat(9), fc.double({ min: 0.1, max: 500, noNaN: true })), { maxLength: 12 })
  .map((runs) => ({ runs, ...boardOf(10, runs) }));

/** How often a way can be walked without passing a node twice: by trying all. */
function ways({ edges }: Board, from: number, to: number, passed: readonly number[] = []): number {
  if (from === to) return 1;
  return edges[from]!.reduce(
    (sum, e) => (e.to === from || passed.includes(e.to) ? sum : sum + ways({ edges, lengths: [] }, e.to, to, [...passed, from])),
    0,
  );
} // prettier-ignore

it('gives the way that a search gives, and its length to the last bit; only where there is no other', () => {
  let asked = 0;
  fc.assert(
    fc.property(board, (b) => {
      const tree = treeWays(b.edges);
      for (let from = 0; from < 10; from++) {
        const searched = shortestTree(from, b.edges, b.lengths);
        for (let to = 0; to < 10; to++) {
          if (!tree.oneWay(from, to)) continue;
          asked++;
          const way: number[] = [];
          for (let at = to; at !== from; at = searched.before[at]!) way.unshift(searched.by[at]!);
          expect(tree.between(from, to)).toEqual(way);
          expect(way.reduce((sum, k) => sum + b.lengths[k]!, 0)).toBe(searched.distance[to]);
          expect(ways(b, from, to)).toBe(1);
        }
      }
    }),
  );
  expect(asked).toBeGreaterThan(100);
});

it('takes every part without a loop, and none with one', () => {
  const b = boardOf(8, [[0, 1, 5], [1, 2, 5], [1, 3, 5], [4, 5, 5], [5, 6, 5], [6, 4, 5]]); // prettier-ignore
  const tree = treeWays(b.edges);
  expect([tree.oneWay(0, 3), tree.oneWay(7, 7), tree.oneWay(0, 4), tree.oneWay(4, 5)]).toEqual([true, true, false, false]); // prettier-ignore
  const doubled = treeWays(boardOf(2, [[0, 1, 5], [0, 1, 5]]).edges); // prettier-ignore
  expect(doubled.oneWay(0, 1)).toBe(false);
});
