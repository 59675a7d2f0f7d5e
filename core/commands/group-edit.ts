import { z } from 'zod';
import { Id } from '../model/ids';
import { Group } from '../model/wire';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

const g = Group.shape;

export const groupEdit = command({
  id: 'group.edit',
  label: 'Edit group',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      designator: g.designator.optional(),
      form: g.form.optional(),
      layMm: g.layMm.nullable(),
      shieldEnds: g.shieldEnds.nullable(),
      exposedMm: g.exposedMm.nullable(),
    }),
  }),
  refuse: (project, { id }) => missing(project, 'groups', [id], 'group'),
  run(draft, { id, change }, _context, project) {
    applyChange(draftObject(draft, project, 'groups', id), change);
  },
});
