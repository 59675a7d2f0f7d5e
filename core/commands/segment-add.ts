import { z } from 'zod';
import { Id } from '../model/ids';
import { Segment } from '../model/topology';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { missing } from './shared/draft-object';

export const segmentAdd = command({
  id: 'segment.add',
  label: 'Add segment',
  args: z.strictObject({ ...Segment.shape, id: Id.optional(), designator: z.string().min(1).optional() }),
  refuse(project, { from, to }) {
    const gone = missing(project, 'nodes', [from, to], 'node');
    if (gone) return gone;
    if (from === to) return 'A segment joins two different nodes.';
    const same = project.segments.find(
      (s) => (s.from === from && s.to === to) || (s.from === to && s.to === from),
    );
    return same ? `${same.designator} joins these nodes already.` : null;
  },
  run(draft, { id, designator, ...rest }, { newId }, project) {
    draft.segments.push({
      id: id ?? newId(),
      designator: designator ?? nextDesignator(LETTERS.segments, project.segments),
      ...rest,
    });
  },
});
