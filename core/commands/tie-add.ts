import { z } from 'zod';
import { Id } from '../model/ids';
import { TiePart } from '../model/parts/accessories';
import { Tie } from '../model/topology';
import { command } from './command';
import { embedPart } from './shared/embed-part';
import { noStation } from './shared/stations';

export const tieAdd = command({
  id: 'tie.add',
  label: 'Add tie',
  args: z.strictObject({ part: TiePart, station: Tie.shape.station, id: Id.optional() }),
  refuse: (project, { station }) => noStation(project, station),
  run(draft, { part, station, id }, { newId }, project) {
    draft.ties.push({ id: id ?? newId(), part: embedPart(draft, project, part), station });
  },
});
