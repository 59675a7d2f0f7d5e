import { z } from 'zod';
import { Id } from '../model/ids';
import { CablePart } from '../model/parts/wire';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { embedPart } from './shared/embed-part';

/** Places a cable; its cores are then drawn as wires that name it. */
export const cableAdd = command({
  id: 'cable.add',
  label: 'Add cable',
  args: z.strictObject({
    part: CablePart,
    designator: z.string().min(1).optional(),
    note: z.string().optional(),
    id: Id.optional(),
  }),
  refuse: () => null,
  run(draft, { part, designator, note, id }, { newId }, project) {
    draft.cables.push({
      id: id ?? newId(),
      designator: designator ?? nextDesignator(LETTERS.cables, project.cables),
      part: embedPart(draft, project, part),
      ...(note === undefined ? {} : { note }),
    });
  },
});
