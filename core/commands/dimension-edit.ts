import { z } from 'zod';
import { Id } from '../model/ids';
import { Dimension } from '../model/topology';
import { command } from './command';
import { noDatums } from './shared/datums';
import { applyChange, draftObject, missing } from './shared/draft-object';

const { form, datums, offsetMm, plusMm, minusMm } = Dimension.shape;

/** Removed like any object, by `objects.remove`. */
export const dimensionEdit = command({
  id: 'dimension.edit',
  label: 'Edit dimension',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      form: form.optional(),
      datums: datums.optional(),
      offsetMm: offsetMm.optional(),
      plusMm: plusMm.nullable(),
      minusMm: minusMm.nullable(),
    }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'dimensions', [id], 'dimension') ?? noDatums(project, change.datums ?? []),
  run(draft, { id, change }, _context, project) {
    applyChange(draftObject(draft, project, 'dimensions', id), change);
  },
});
