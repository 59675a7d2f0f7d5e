import { z } from 'zod';
import { Id } from '../model/ids';
import { Label } from '../model/topology';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

export const labelEdit = command({
  id: 'label.edit',
  label: 'Edit label',
  args: z.strictObject({ id: Id, change: z.strictObject({ text: Label.shape.text.optional() }) }),
  refuse: (project, { id }) => missing(project, 'labels', [id], 'label'),
  run(draft, { id, change }, _context, project) {
    applyChange(draftObject(draft, project, 'labels', id), change);
  },
});
