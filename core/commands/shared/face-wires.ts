import type { Draft } from 'immer';
import { symbolOf } from '../../derive/symbol';
import type { Project } from '../../model/project';
import { draftObject, objectIn } from './draft-object';
import { halfAt, type WireTarget } from './wire-target';
import { wiresAt } from './wires-at';

/**
 * Turns a connector that has no wire yet so that its first one leaves towards the other end. Only single rows are
 * turned: those with more have wires on both sides anyway.
 */
export function faceFirstWire(
  draft: Draft<Project>,
  project: Project,
  mine: WireTarget,
  other: WireTarget,
): void {
  if (mine.at !== 'cavity') return;
  if ((halfAt(project, mine.connector)?.rows ?? 1) > 1) return;
  if (wiresAt(project, new Set([mine.connector])).length > 0) return;
  const here = middleOf(project, mine);
  const there = middleOf(project, other);
  if (here === undefined || there === undefined || here === there) return;
  const exit = there > here ? 'right' : 'left';
  const connector = draftObject(draft, project, 'connectors', mine.connector);
  if (connector.exit !== exit) connector.exit = exit;
}

/** Middle of what the wire ends at, along x, in sheet mm. */
function middleOf(project: Project, target: WireTarget): number | undefined {
  if (target.at === 'free') return target.position.x;
  if (target.at === 'splice') return objectIn(project, 'splices', target.splice)?.position.x;
  const connector = objectIn(project, 'connectors', target.connector);
  return connector && connector.position.x + symbolOf(halfAt(project, connector.id), connector).widthMm / 2;
}
