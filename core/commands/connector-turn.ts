import { z } from 'zod';
import { boardAngleDeg } from '../derive/formboard/board-angle';
import { normalDeg } from '../derive/formboard/normal-deg';
import { Id } from '../model/ids';
import { command } from './command';
import { draftObject, missing, objectIn } from './shared/draft-object';

/**
 * Turns connectors on the formboard: to a direction of the mating axis, or by so many degrees from where each stands
 * (clockwise). `toDeg: null` lays them in line with the run at their node again.
 */
export const connectorTurn = command({
  id: 'connector.turn',
  label: 'Turn connector',
  args: z.union([
    z.strictObject({ ids: z.array(Id), toDeg: z.number().nullable() }),
    z.strictObject({ ids: z.array(Id), byDeg: z.number() }),
  ]),
  refuse(project, { ids }) {
    const gone = missing(project, 'connectors', ids, 'connector');
    if (gone) return gone;
    const loose = ids.map((id) => objectIn(project, 'connectors', id)).find((c) => c && !c.node);
    return loose ? `${loose.designator} has no node on the formboard.` : null;
  },
  run(draft, args, _context, project) {
    for (const id of args.ids) {
      const connector = draftObject(draft, project, 'connectors', id);
      const angle = 'toDeg' in args ? args.toDeg : (boardAngleDeg(project, id) ?? 0) + args.byDeg;
      if (angle === null) delete connector.formboardAngleDeg;
      else connector.formboardAngleDeg = normalDeg(angle);
    }
  },
});
