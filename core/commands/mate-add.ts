import { z } from 'zod';
import { Point } from '../base/point';
import { matingObstacles } from '../derive/mating';
import { Id } from '../model/ids';
import { command } from './command';
import { missing, objectIn } from './shared/draft-object';
import { moveObjects, placed } from './shared/placed';
import { halfAt } from './shared/wire-target';

/**
 * Plugs two connectors together. What cannot mate is refused with the reasons, unless the user insists: then it is
 * kept, and the rules show it. Fields that are not known do not refuse.
 */
export const mateAdd = command({
  id: 'mate.add',
  label: 'Mate connectors',
  args: z.strictObject({
    a: Id,
    b: Id,
    insist: z.boolean().optional(),
    /** Where the halves come to lie, so that plugging one into the other is one step. */
    moves: z.array(z.strictObject({ id: Id, to: Point })).optional(),
  }),
  refuse(project, { a, b, insist, moves }) {
    const gone = missing(project, 'connectors', [a, b], 'connector');
    if (gone) return gone;
    const lost = (moves ?? []).find((m) => !placed(project, m.id));
    if (lost) return `There is nothing to move with id ${lost.id}.`;
    if (a === b) return 'A connector cannot mate with itself.';
    for (const id of [a, b]) {
      const taken = project.mates.find((m) => m.a === id || m.b === id);
      if (!taken) continue;
      const other = objectIn(project, 'connectors', taken.a === id ? taken.b : taken.a);
      return `${objectIn(project, 'connectors', id)?.designator} is mated with ${other?.designator} already.`;
    }
    const [left, right] = [halfAt(project, a), halfAt(project, b)];
    if (insist || !left || !right) return null;
    const { obstacles } = matingObstacles(left, right);
    return obstacles.length ? `They cannot mate: ${obstacles.map((o) => o.text).join('; ')}.` : null;
  },
  run(draft, { a, b, moves }, { newId }, project) {
    if (moves) moveObjects(draft, project, moves);
    draft.mates.push({ id: newId(), a, b });
  },
});
