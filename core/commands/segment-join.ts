import { z } from 'zod';
import { Id } from '../model/ids';
import { command } from './command';
import { joinSegments, noJoin } from './shared/join-segments';

/**
 * Makes one segment of the two that meet at a node, which goes: the inverse of a split. Refused where something sits on the
 * node, or where more or fewer than two segments meet.
 */
export const segmentJoin = command({
  id: 'segment.join',
  label: 'Join segments',
  args: z.strictObject({ node: Id }),
  refuse: (project, { node }) => noJoin(project, node),
  run(draft, { node }, _context, project) {
    joinSegments(draft, project, node);
  },
});
