import { z } from 'zod';
import { Id } from '../model/ids';
import { TiePart } from '../model/parts/accessories';
import { Tie } from '../model/topology';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';
import { noStation } from './shared/stations';

/** Another part, or another place: along the segment, or on another one. */
export const tieEdit = command({
  id: 'tie.edit',
  label: 'Edit tie',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({ part: TiePart.optional(), station: Tie.shape.station.optional() }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'ties', [id], 'tie') ?? noStation(project, change.station),
  run(draft, { id, change: { part, ...rest } }, _context, project) {
    const partId = part && embedPart(draft, project, part);
    applyChange(draftObject(draft, project, 'ties', id), { ...rest, part: partId });
  },
});
