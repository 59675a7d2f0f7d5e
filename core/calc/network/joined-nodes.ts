import { problem, ok, type Result } from '../../base/result';
import type { NetworkProblem } from './network';

/** A connection without resistance: the potential of `to` is that of `from` plus `riseV`. */
export interface Joint {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly riseV: number;
  readonly isSource: boolean;
}

/** Nodes joined without resistance, as one unknown each, with every node's fixed offset from it. */
export interface JoinedNodes {
  readonly root: Int32Array;
  readonly offsetV: Float64Array;
}

/**
 * Joins the nodes of ideal sources and of zero-ohm branches (union-find over a forest, offsets walked out afterwards),
 * so that the remaining matrix is that of a passive network: symmetric and positive definite. A joint that closes a loop
 * is refused: with a source in it the loop is a short circuit or a duplicate, without one its current is undetermined.
 */
export function joinNodes(count: number, joints: readonly Joint[]): Result<JoinedNodes, NetworkProblem> {
  const beside: { to: number; riseV: number; joint: Joint }[][] = Array.from({ length: count }, () => []);
  for (const j of joints) {
    beside[j.from]!.push({ to: j.to, riseV: j.riseV, joint: j });
    beside[j.to]!.push({ to: j.from, riseV: -j.riseV, joint: j });
  }
  const root = new Int32Array(count).fill(-1);
  const offsetV = new Float64Array(count);
  const up: (Joint | undefined)[] = new Array<Joint | undefined>(count).fill(undefined);
  const used = new Set<Joint>();
  for (let start = 0; start < count; start++) {
    if (root[start] !== -1) continue;
    root[start] = start;
    const todo = [start];
    for (let node = todo.pop(); node !== undefined; node = todo.pop()) {
      for (const { to, riseV, joint } of beside[node]!) {
        if (root[to] !== -1) continue;
        root[to] = start;
        offsetV[to] = offsetV[node]! + riseV;
        up[to] = joint;
        used.add(joint);
        todo.push(to);
      }
    }
  }
  const closing = joints.filter((j) => !used.has(j));
  const conflicts = closing.filter((j) => !agrees(j, offsetV));
  const loops = (conflicts.length ? conflicts : closing).map((j) => loopOf(j, up));
  if (loops.length === 0) return ok({ root, offsetV });
  return problem({
    code: conflicts.length ? 'sources-conflict' : 'loop-without-resistance',
    ids: joints.filter((j) => loops.some((loop) => loop.has(j))).map((j) => j.id),
  });
}

/** The joints of the loop that one more joint closes: what lies on only one of the two ways to the root. */
function loopOf(closing: Joint, up: readonly (Joint | undefined)[]): ReadonlySet<Joint> {
  const loop = new Set<Joint>([closing]);
  for (const end of [closing.from, closing.to]) {
    let node = end;
    for (let j = up[node]; j !== undefined; j = up[node]) {
      if (!loop.delete(j)) loop.add(j);
      node = j.from === node ? j.to : j.from;
    }
  }
  return loop;
}

const agrees = (j: Joint, offsetV: Float64Array): boolean =>
  Math.abs(offsetV[j.to]! - offsetV[j.from]! - j.riseV) < 1e-12 * (1 + Math.abs(j.riseV));

/**
 * Currents through the joints from what leaves each node by all other ways (A, positive = leaving), by shedding leaves
 * of the forest of joints: Kirchhoff's current law at each node in turn.
 */
export function jointCurrents(count: number, joints: readonly Joint[], leavingA: Float64Array): Float64Array {
  const beside: number[][] = Array.from({ length: count }, () => []);
  joints.forEach((j, k) => {
    beside[j.from]!.push(k);
    beside[j.to]!.push(k);
  });
  const current = new Float64Array(joints.length);
  const done = new Uint8Array(joints.length);
  const open = beside.map((b) => b.length);
  const rest = Float64Array.from(leavingA);
  const leaves = open.flatMap((n, i) => (n === 1 ? [i] : []));
  for (let node = leaves.pop(); node !== undefined; node = leaves.pop()) {
    const k = beside[node]!.find((b) => !done[b]);
    if (k === undefined) continue;
    const j = joints[k]!;
    // What leaves the node by other ways must come in through the joint.
    current[k] = j.to === node ? rest[node]! : -rest[node]!;
    const other = j.to === node ? j.from : j.to;
    rest[other]! += rest[node]!;
    done[k] = 1;
    open[other]!--;
    if (open[other] === 1) leaves.push(other);
  }
  return current;
}
