import { z } from 'zod';
import { Id } from '../model/ids';
import { CoveringPart } from '../model/parts/accessories';
import { Covering } from '../model/topology';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';
import { noStation } from './shared/stations';

const { from, to, layer } = Covering.shape;

export const coveringEdit = command({
  id: 'covering.edit',
  label: 'Edit covering',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      part: CoveringPart.optional(),
      from: from.optional(),
      to: to.optional(),
      layer: layer.optional(),
      designator: z.string().min(1).optional(),
    }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'coverings', [id], 'covering') ?? noStation(project, change.from, change.to),
  run(draft, { id, change: { part, ...rest } }, _context, project) {
    const partId = part && embedPart(draft, project, part);
    applyChange(draftObject(draft, project, 'coverings', id), { ...rest, part: partId });
  },
});
