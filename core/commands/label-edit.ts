import { z } from 'zod';
import { Id } from '../model/ids';
import { LabelPart } from '../model/parts/accessories';
import { Label } from '../model/topology';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';
import { noLabelPlace } from './shared/label-place';

const { text, on, datumDistanceMm } = Label.shape;

export const labelEdit = command({
  id: 'label.edit',
  label: 'Edit label',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      text: text.optional(),
      on: on.optional(),
      datumDistanceMm: datumDistanceMm.nullable(),
      part: LabelPart.nullable().optional(),
    }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'labels', [id], 'label') ?? (change.on ? noLabelPlace(project, change.on) : null),
  run(draft, { id, change: { part, ...rest } }, _context, project) {
    const partId = part ? embedPart(draft, project, part) : part;
    const label = draftObject(draft, project, 'labels', id);
    // A text that somebody types is his own from then on.
    const typed = rest.text !== undefined && rest.text !== label.text;
    applyChange(label, { ...rest, part: partId, ...(typed ? { made: null } : {}) });
  },
});
