import { z } from 'zod';
import { branchBeyond } from '../derive/formboard/branch-beyond';
import { moved, turning } from '../derive/formboard/relaid';
import { Id } from '../model/ids';
import { command } from './command';
import { objectIn } from './shared/draft-object';
import { relay } from './shared/relay';

/** Turns what hangs on a node by a segment about that node, clockwise; lengths stay, connectors turn along. */
export const branchRotate = command({
  id: 'branch.rotate',
  label: 'Rotate branch',
  args: z.strictObject({ node: Id, segment: Id, byDeg: z.number() }),
  refuse(project, { node, segment }) {
    const part = branchBeyond(project, segment, node);
    return part.ok ? null : part.problem;
  },
  run(draft, { node, segment, byDeg }, _context, project) {
    const part = branchBeyond(project, segment, node);
    const pivot = objectIn(project, 'nodes', node);
    if (!part.ok || !pivot) return;
    const motion = turning(pivot.position, byDeg);
    relay(draft, project, moved(project, part.value.nodes, part.value.segments, motion));
  },
});
