import { z } from 'zod';
import { Id } from '../model/ids';
import { CoveringPart } from '../model/parts/accessories';
import { Covering } from '../model/topology';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { embedPart } from './shared/embed-part';
import { noStation } from './shared/stations';

const { from, to, layer } = Covering.shape;

export const coveringAdd = command({
  id: 'covering.add',
  label: 'Add covering',
  args: z.strictObject({
    part: CoveringPart,
    from,
    to,
    layer: layer.optional(),
    designator: z.string().min(1).optional(),
    id: Id.optional(),
  }),
  refuse: (project, { from, to }) => noStation(project, from, to),
  run(draft, { part, from, to, layer, designator, id }, { newId }, project) {
    draft.coverings.push({
      id: id ?? newId(),
      designator: designator ?? nextDesignator(LETTERS.coverings, project.coverings),
      part: embedPart(draft, project, part),
      from,
      to,
      layer: layer ?? 1,
    });
  },
});
