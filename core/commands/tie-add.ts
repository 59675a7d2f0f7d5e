import { z } from 'zod';
import { Id } from '../model/ids';
import { TiePart } from '../model/parts/accessories';
import { Tie } from '../model/topology';
import { command } from './command';
import { missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

export const tieAdd = command({
  id: 'tie.add',
  label: 'Add tie',
  args: z.strictObject({ part: TiePart, station: Tie.shape.station, id: Id.optional() }),
  refuse: (project, { station }) => missing(project, 'segments', [station.segment], 'segment'),
  run(draft, { part, station, id }, { newId }, project) {
    draft.ties.push({ id: id ?? newId(), part: embedPart(draft, project, part), station });
  },
});
