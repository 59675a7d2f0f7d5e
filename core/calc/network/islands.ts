import { problem, ok, type Result } from '../../base/result';
import type { Load, Network, NetworkProblem } from './network';
import type { JoinedNodes } from './joined-nodes';

/** A part of the network that is connected by something with a finite resistance. */
export interface Island {
  /** The node whose potential is set to zero; absent where no source and no reference is. */
  readonly ground: number | undefined;
}

export interface Islands {
  /** Island of each node. */
  readonly of: Int32Array;
  readonly list: readonly Island[];
}

/**
 * Splits a network into its islands. A constant current joins nothing: where its two ends lie in different islands, or in
 * one that nothing feeds, there is no solution, and the loads are named.
 */
export function islandsOf(
  network: Network,
  nodeIndex: ReadonlyMap<string, number>,
  joined: JoinedNodes,
): Result<Islands, NetworkProblem> {
  const count = nodeIndex.size;
  const beside: number[][] = Array.from({ length: count }, () => []);
  const connect = (a: number, b: number): void => {
    beside[a]!.push(b);
    beside[b]!.push(a);
  };
  const at = (name: string): number => nodeIndex.get(name)!;
  for (let i = 0; i < count; i++) connect(i, joined.root[i]!);
  for (const b of network.branches) connect(at(b.from), at(b.to));
  for (const s of network.sources) connect(at(s.positive), at(s.negative));
  for (const l of network.loads) if (l.draws === 'resistance') connect(at(l.from), at(l.to));

  const of = new Int32Array(count).fill(-1);
  let islands = 0;
  for (let start = 0; start < count; start++) {
    if (of[start] !== -1) continue;
    of[start] = islands;
    const todo = [start];
    for (let node = todo.pop(); node !== undefined; node = todo.pop())
      for (const next of beside[node]!)
        if (of[next] === -1) {
          of[next] = islands;
          todo.push(next);
        }
    islands++;
  }
  const grounds: (number | undefined)[] = new Array<number | undefined>(islands).fill(undefined);
  const fed = new Uint8Array(islands);
  for (const s of network.sources) {
    fed[of[at(s.negative)]!] = 1;
    grounds[of[at(s.negative)]!] ??= at(s.negative);
  }
  const reference = network.reference === undefined ? undefined : nodeIndex.get(network.reference);
  if (reference !== undefined) grounds[of[reference]!] = reference;

  const drawing = network.loads.filter((l) => l.draws === 'current' && l.currentA !== 0);
  const split = drawing.filter((l) => of[at(l.from)] !== of[at(l.to)]);
  if (split.length) {
    const ends = new Set(split.flatMap((l) => [of[at(l.from)]!, of[at(l.to)]!]));
    const dead = [...ends].filter((i) => !fed[i]);
    return problem({
      code: 'no-return-path',
      ids: idsOf(split),
      nodes: nodesIn(nodeIndex, of, dead.length ? dead : [...ends]),
    });
  }
  const unfed = drawing.filter((l) => !fed[of[at(l.from)]!]);
  if (unfed.length)
    return problem({
      code: 'no-source',
      ids: idsOf(unfed),
      nodes: nodesIn(
        nodeIndex,
        of,
        unfed.map((l) => of[at(l.from)]!),
      ),
    });
  return ok({ of, list: grounds.map((ground) => ({ ground })) });
}

const idsOf = (loads: readonly Load[]): string[] => loads.map((l) => l.id);

function nodesIn(index: ReadonlyMap<string, number>, of: Int32Array, islands: readonly number[]): string[] {
  return [...index].filter(([, i]) => islands.includes(of[i]!)).map(([name]) => name);
}
