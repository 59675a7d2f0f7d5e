import { z } from 'zod';
import { Id } from '../model/ids';
import { FusePart } from '../model/parts/accessories';
import { Fuse } from '../model/electrical';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

const { wire, ratedA, fromSourceMm } = Fuse.shape;

export const fuseAdd = command({
  id: 'fuse.add',
  label: 'Add fuse',
  args: z.strictObject({
    wire,
    part: FusePart.optional(),
    ratedA,
    fromSourceMm,
    designator: z.string().min(1).optional(),
    id: Id.optional(),
  }),
  refuse: (project, { wire }) => missing(project, 'wires', [wire], 'wire'),
  run(draft, { part, designator, id, ...rest }, { newId }, project) {
    draft.fuses.push({
      id: id ?? newId(),
      designator: designator ?? nextDesignator(LETTERS.fuses, project.fuses),
      ...(part ? { part: embedPart(draft, project, part) } : {}),
      ...rest,
    });
  },
});
