import { byId } from '../../base/by-id';
import { memoByIdentity } from '../../base/memo-by-identity';
import type { Node, Segment } from '../../model/topology';
import type { Project } from '../../model/project';
import { normalDeg } from './normal-deg';
import { segmentPath } from './segment-path';

/** Segments by the nodes that they end at, in the order of the project. */
export const segmentsByNode = memoByIdentity(
  (segments: readonly Segment[]): ReadonlyMap<string, readonly Segment[]> => {
    const out = new Map<string, Segment[]>();
    for (const s of segments)
      for (const node of new Set([s.from, s.to])) {
        const list = out.get(node);
        if (list) list.push(s);
        else out.set(node, [s]);
      }
    return out;
  },
);

/**
 * Direction in which a segment leaves one of its nodes, radians; undefined where it has no length. A curve leaves its end
 * towards the point after it.
 */
export function leavingRad(s: Segment, node: string, nodes: ReadonlyMap<string, Node>): number | undefined {
  const path = segmentPath(s, nodes);
  const [first, last] = [path?.pieces[0], path?.pieces.at(-1)];
  if (!path || !first || !last) return undefined;
  const here = s.from === node ? path.start : path.end;
  const next = s.from === node ? (first.control?.[0] ?? first.to) : (last.control?.[1] ?? last.from);
  return Math.atan2(next.y - here.y, next.x - here.x);
}

/**
 * The direction in which a node looks away from the harness: opposite to the runs that end there, degrees clockwise from
 * right. Right where no run tells.
 */
export function awayFromRunsDeg(
  node: string,
  segments: readonly Segment[],
  nodes: ReadonlyMap<string, Node>,
): number {
  let [x, y] = [0, 0];
  for (const s of segments) {
    const leave = leavingRad(s, node, nodes);
    if (leave === undefined) continue;
    x -= Math.cos(leave);
    y -= Math.sin(leave);
  }
  return Math.hypot(x, y) < 1e-9 ? 0 : normalDeg((Math.atan2(y, x) * 180) / Math.PI);
}

/** Direction of the mating axis of a connector on the formboard; undefined where it has no node. */
export function boardAngleDeg(
  project: Pick<Project, 'connectors' | 'nodes' | 'segments'>,
  connector: string,
): number | undefined {
  const found = byId(project.connectors).get(connector);
  if (!found?.node) return undefined;
  if (found.formboardAngleDeg !== undefined) return normalDeg(found.formboardAngleDeg);
  const segments = segmentsByNode(project.segments).get(found.node) ?? [];
  return awayFromRunsDeg(found.node, segments, byId(project.nodes));
}
