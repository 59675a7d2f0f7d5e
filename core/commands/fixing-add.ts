import { z } from 'zod';
import { Id } from '../model/ids';
import { ClampPart, GrommetPart } from '../model/parts/accessories';
import { Fixing } from '../model/topology';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { embedPart } from './shared/embed-part';
import { noStation } from './shared/stations';

/** A clamp or a grommet at a station of a segment. */
export const fixingAdd = command({
  id: 'fixing.add',
  label: 'Add fixing',
  args: z.strictObject({
    part: z.discriminatedUnion('kind', [ClampPart, GrommetPart]),
    station: Fixing.shape.station,
    designator: z.string().min(1).optional(),
    id: Id.optional(),
  }),
  refuse: (project, { station }) => noStation(project, station),
  run(draft, { part, station, designator, id }, { newId }, project) {
    draft.fixings.push({
      id: id ?? newId(),
      designator: designator ?? nextDesignator(LETTERS.fixings, project.fixings),
      part: embedPart(draft, project, part),
      station,
    });
  },
});
