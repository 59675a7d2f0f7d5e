import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import type { Project } from '../model/project';
import type { Node, Segment } from '../model/topology';
import { segmentsByNode } from './formboard/board-angle';
import { segmentLengthMm } from './route';

/** The branch that a free end hangs on, as laid out on the formboard. */
export interface Branch {
  /** Where it leaves the rest of the harness. */
  readonly root: Node;
  readonly end: Node;
  readonly lengthMm: number;
}

/** The parts of a project that branches are read from. */
export type BranchInput = Pick<Project, 'nodes' | 'segments' | 'connectors'>;

/**
 * The branch of a node: from it along the segments to the first node where the harness divides, or where another connector
 * sits; an end on the way of others has no length of its own. Undefined for a node that no segment reaches.
 */
export function branchOf(project: BranchInput, node: string | undefined): Branch | undefined {
  const nodes = byId(project.nodes);
  const end = node === undefined ? undefined : nodes.get(node);
  if (!end) return undefined;
  const at = segmentsByNode(project.segments);
  const taken = nodesTaken(project.connectors);
  let here = end;
  let lengthMm = 0;
  let last: Segment | undefined;
  for (;;) {
    const ways: readonly Segment[] = (at.get(here.id) ?? []).filter((s) => s !== last);
    const way = ways[0];
    if (!way || ways.length !== 1 || (here !== end && taken.has(here.id))) break;
    const next = nodes.get(way.from === here.id ? way.to : way.from);
    if (!next || next === end) break;
    lengthMm += segmentLengthMm(way, nodes);
    last = way;
    here = next;
  }
  return at.has(end.id) ? { root: here, end, lengthMm } : undefined;
}

/** Tells which nodes are joined by segments: the same answer for all of one piece, the node itself where nothing joins it. */
export const formboardPieces = memoByIdentity((segments: readonly Segment[]): ((node: string) => string) => {
  const parent = new Map<string, string>();
  const root = (node: string): string => {
    let at = node;
    for (let up = parent.get(at); up !== undefined && up !== at; up = parent.get(at)) {
      parent.set(at, parent.get(up) ?? up);
      at = up;
    }
    return at;
  };
  for (const s of segments) {
    const [a, b] = [root(s.from), root(s.to)];
    if (a !== b) parent.set(b, a);
  }
  return root;
});

const nodesTaken = memoByIdentity(
  (connectors: Project['connectors']): ReadonlySet<string> =>
    new Set(connectors.flatMap((c) => c.node ?? [])),
);
