import { z } from 'zod';
import { Point } from '../base/point';
import { heldMoves } from '../derive/formboard/held-moves';
import { Id } from '../model/ids';
import { command } from './command';
import { draftObject, missing } from './shared/draft-object';

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
    const held = heldMoves(project, moves);
    return held.ok ? null : held.problem;
  },
  run(draft, { moves }, _context, project) {
    const held = heldMoves(project, moves);
    if (!held.ok) return;
    for (const [id, to] of held.value.nodes) {
      const node = draftObject(draft, project, 'nodes', id);
      if (node.position.x !== to.x || node.position.y !== to.y) node.position = to;
    }
    for (const [id, via] of held.value.vias) draftObject(draft, project, 'segments', id).via = [...via];
  },
});
