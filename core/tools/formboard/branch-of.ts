import { byId } from '../../base/by-id';
import { branchBeyond, type BranchPart } from '../../derive/formboard/branch-beyond';
import type { Project } from '../../model/project';

export interface Branch extends BranchPart {
  /** The node about which it turns. */
  readonly node: string;
  readonly segment: string;
}

/** The smaller of the two parts that a segment joins, with the node on which it hangs; null where it is part of a loop. */
export function branchOf(project: Project, segment: string): Branch | null {
  const s = byId(project.segments).get(segment);
  if (!s) return null;
  const [a, b] = [branchBeyond(project, segment, s.from), branchBeyond(project, segment, s.to)];
  if (!a.ok || !b.ok) return null;
  const beyondFrom = a.value.nodes.size <= b.value.nodes.size;
  return { ...(beyondFrom ? a.value : b.value), node: beyondFrom ? s.from : s.to, segment };
}
