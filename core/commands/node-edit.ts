import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from '../model/ids';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

export const nodeEdit = command({
  id: 'node.edit',
  label: 'Edit node',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({ designator: z.string().min(1).optional(), position: Point.optional() }),
  }),
  refuse: (project, { id }) => missing(project, 'nodes', [id], 'node'),
  run(draft, { id, change }, _context, project) {
    applyChange(draftObject(draft, project, 'nodes', id), change);
  },
});
