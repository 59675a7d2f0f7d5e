import { z } from 'zod';
import { branchBeyond } from '../derive/formboard/branch-beyond';
import { mirroring, moved } from '../derive/formboard/relaid';
import { trunkDirectionDeg } from '../derive/formboard/trunk-direction';
import { Id } from '../model/ids';
import { command } from './command';
import { objectIn } from './shared/draft-object';
import { relay } from './shared/relay';

/** Mirrors what hangs on a node by a segment about the line of the trunk there, or of a given direction; lengths stay. */
export const branchMirror = command({
  id: 'branch.mirror',
  label: 'Mirror branch',
  args: z.strictObject({ node: Id, segment: Id, axisDeg: z.number().optional() }),
  refuse(project, { node, segment }) {
    const part = branchBeyond(project, segment, node);
    return part.ok ? null : part.problem;
  },
  run(draft, { node, segment, axisDeg }, _context, project) {
    const part = branchBeyond(project, segment, node);
    const pivot = objectIn(project, 'nodes', node);
    if (!part.ok || !pivot) return;
    const motion = mirroring(pivot.position, axisDeg ?? trunkDirectionDeg(project, node, segment));
    relay(draft, project, moved(project, part.value.nodes, part.value.segments, motion));
  },
});
