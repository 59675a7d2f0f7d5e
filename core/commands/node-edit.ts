import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from '../model/ids';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';
import { moveObjects, whatHolds } from './shared/placed';

export const nodeEdit = command({
  id: 'node.edit',
  label: 'Edit node',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({ designator: z.string().min(1).optional(), position: Point.optional() }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'nodes', [id], 'node') ??
    (change.position ? whatHolds(project, [{ id, to: change.position }]) : null),
  run(draft, { id, change: { position, ...rest } }, _context, project) {
    if (position) moveObjects(draft, project, [{ id, to: position }]);
    applyChange(draftObject(draft, project, 'nodes', id), rest);
  },
});
