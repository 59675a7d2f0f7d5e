import { z } from 'zod';
import { straightenedTrunk } from '../derive/formboard/straightened-trunk';
import { Id } from '../model/ids';
import { command } from './command';
import { relay } from './shared/relay';

/** Lays the run between two nodes on a line, with its lengths; what hangs on it goes along. */
export const trunkStraighten = command({
  id: 'trunk.straighten',
  label: 'Straighten trunk',
  args: z.strictObject({ from: Id, to: Id, angleDeg: z.number().optional() }),
  refuse(project, { from, to, angleDeg }) {
    const laid = straightenedTrunk(project, from, to, angleDeg);
    return laid.ok ? null : laid.problem;
  },
  run(draft, { from, to, angleDeg }, _context, project) {
    const laid = straightenedTrunk(project, from, to, angleDeg);
    if (laid.ok) relay(draft, project, laid.value);
  },
});
