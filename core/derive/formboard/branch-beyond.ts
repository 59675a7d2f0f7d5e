import { byId } from '../../base/by-id';
import { ok, problem, type Result } from '../../base/result';
import type { Project } from '../../model/project';
import { sidesOfSegment } from '../sides-of-segment';

/** Part of a harness that hangs on one node by one segment. */
export interface BranchPart {
  readonly nodes: ReadonlySet<string>;
  /** With the segment that it hangs on. */
  readonly segments: ReadonlySet<string>;
}

type Board = Pick<Project, 'nodes' | 'segments'>;

/** What lies beyond a node across one of its segments; or why that is no branch, in words. */
export function branchBeyond(project: Board, segment: string, node: string): Result<BranchPart, string> {
  const s = byId(project.segments).get(segment);
  const n = byId(project.nodes).get(node);
  if (!s) return problem(`There is no segment with id ${segment}.`);
  if (!n) return problem(`There is no node with id ${node}.`);
  if (s.from !== node && s.to !== node) return problem(`${s.designator} does not end at ${n.designator}.`);
  const sides = sidesOfSegment(s, project.segments);
  if (!sides)
    return problem(`${s.designator} is part of a closed loop, so that nothing beyond it can turn by itself.`);
  const nodes = s.from === node ? sides[1] : sides[0];
  const segments = project.segments.filter((x) => nodes.has(x.from) || nodes.has(x.to));
  return ok({ nodes, segments: new Set(segments.map((x) => x.id)) });
}
