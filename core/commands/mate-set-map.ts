import { z } from 'zod';
import { Mate } from '../model/connector';
import { Id } from '../model/ids';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

/** Declares which cavity meets which, where the two halves are numbered differently. Null: from the geometry. */
export const mateSetMap = command({
  id: 'mate.set-map',
  label: 'Set number map',
  args: z.strictObject({ id: Id, map: Mate.shape.map.unwrap().nullable() }),
  refuse: (project, { id }) => missing(project, 'mates', [id], 'mate'),
  run(draft, { id, map }, _context, project) {
    applyChange(draftObject(draft, project, 'mates', id), { map });
  },
});
