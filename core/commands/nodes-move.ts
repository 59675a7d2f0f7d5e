import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from '../model/ids';
import { command } from './command';
import { missing } from './shared/draft-object';
import { moveObjects, whatHolds } from './shared/placed';

/**
 * Moves nodes of the formboard, for the end of a gesture. Locked segments keep their drawn length: a node slides, or the
 * move is refused. Via points go along where both ends of a segment move alike.
 */
export const nodesMove = command({
  id: 'nodes.move',
  label: 'Move nodes',
  args: z.strictObject({ moves: z.array(z.strictObject({ id: Id, to: Point })) }),
  refuse(project, { moves }) {
    const gone = missing(project, 'nodes', moves.map((m) => m.id), 'node'); // prettier-ignore
    if (gone) return gone;
    return whatHolds(project, moves);
  },
  run(draft, { moves }, _context, project) {
    moveObjects(draft, project, moves);
  },
});
