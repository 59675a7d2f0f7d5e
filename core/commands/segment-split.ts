import { z } from 'zod';
import { Id } from '../model/ids';
import { Station } from '../model/topology';
import { command } from './command';
import { noSplit, splitSegment, takenId } from './shared/split-segment';

/** Cuts a segment in two at a station, with a new node there. All lengths, and all that lies on it, stay as they are. */
export const segmentSplit = command({
  id: 'segment.split',
  label: 'Split segment',
  args: z.strictObject({
    station: Station,
    /** Ids to give to the new node and to the part behind it. */
    node: Id.optional(),
    segment: Id.optional(),
    designator: z.string().min(1).optional(),
  }),
  refuse: (project, { station, node, segment }) =>
    noSplit(project, station) ?? takenId(project, 'nodes', node) ?? takenId(project, 'segments', segment),
  run(draft, { station, node, segment, designator }, { newId }, project) {
    splitSegment(draft, project, station, newId, { node, segment, nodeDesignator: designator });
  },
});
