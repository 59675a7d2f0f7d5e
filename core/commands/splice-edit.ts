import { z } from 'zod';
import { Id } from '../model/ids';
import { SplicePart } from '../model/parts/accessories';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

export const spliceEdit = command({
  id: 'splice.edit',
  label: 'Edit splice',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      designator: z.string().min(1).optional(),
      part: SplicePart.nullable().optional(),
      node: Id.nullable().optional(),
    }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'splices', [id], 'splice') ??
    missing(project, 'nodes', [change.node ?? undefined], 'node'),
  run(draft, { id, change: { part, ...rest } }, _context, project) {
    const partId = part ? embedPart(draft, project, part) : part;
    applyChange(draftObject(draft, project, 'splices', id), { ...rest, part: partId });
  },
});
