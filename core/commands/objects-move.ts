import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from '../model/ids';
import { command } from './command';
import { moveObjects, placed, whatHolds } from './shared/placed';

/** Moves connectors, equipment (with the connectors on it), splices and nodes to new positions. */
export const objectsMove = command({
  id: 'objects.move',
  label: 'Move',
  args: z.strictObject({ moves: z.array(z.strictObject({ id: Id, to: Point })) }),
  refuse: (project, { moves }) => {
    const gone = moves.find((m) => !placed(project, m.id));
    return gone ? `There is nothing to move with id ${gone.id}.` : whatHolds(project, moves);
  },
  run(draft, { moves }, _context, project) {
    moveObjects(draft, project, moves);
  },
});
