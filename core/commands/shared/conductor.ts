import type { Conductor } from '../../model/parts/wire';
import type { Project } from '../../model/project';
import type { Wire } from '../../model/wire';
import { objectIn } from './draft-object';

/** What is known of a wire's conductor: from its part, or from the core of its cable. */
export function conductorOfWire(project: Project, wire: Wire): Conductor | undefined {
  const core = wire.core;
  const cable = core && objectIn(project, 'cables', core.cable);
  const part = objectIn(project, 'parts', cable?.part ?? wire.part ?? '');
  if (part?.kind === 'wire') return part;
  return part?.kind === 'cable' ? part.cores.find((c) => c.name === core?.name) : undefined;
}
