import { z } from 'zod';
import { Id } from '../model/ids';
import { command } from './command';
import { draftObject, missing } from './shared/draft-object';

export const wireSetStripLength = command({
  id: 'wire.set-strip-length',
  label: 'Set strip length',
  args: z.strictObject({
    id: Id,
    end: z.union([z.literal(0), z.literal(1)]),
    stripLengthMm: z.number().positive().nullable(),
  }),
  refuse: (project, { id }) => missing(project, 'wires', [id], 'wire'),
  run(draft, { id, end, stripLengthMm }, _context, project) {
    const target = draftObject(draft, project, 'wires', id).ends[end];
    if (stripLengthMm === null) delete target.stripLengthMm;
    else target.stripLengthMm = stripLengthMm;
  },
});
