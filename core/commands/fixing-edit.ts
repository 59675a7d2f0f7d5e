import { z } from 'zod';
import { Id } from '../model/ids';
import { ClampPart, GrommetPart } from '../model/parts/accessories';
import { Fixing } from '../model/topology';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';
import { noStation } from './shared/stations';

/** Another part, or another place: along the segment, or on another one. */
export const fixingEdit = command({
  id: 'fixing.edit',
  label: 'Edit fixing',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      part: z.discriminatedUnion('kind', [ClampPart, GrommetPart]).optional(),
      station: Fixing.shape.station.optional(),
      designator: z.string().min(1).nullable().optional(),
    }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'fixings', [id], 'fixing') ?? noStation(project, change.station),
  run(draft, { id, change: { part, ...rest } }, _context, project) {
    const partId = part && embedPart(draft, project, part);
    applyChange(draftObject(draft, project, 'fixings', id), { ...rest, part: partId });
  },
});
