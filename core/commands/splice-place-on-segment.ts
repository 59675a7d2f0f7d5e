import { z } from 'zod';
import { Id } from '../model/ids';
import { Station } from '../model/topology';
import { command } from './command';
import { draftObject, missing } from './shared/draft-object';
import { endAt, splitSegment, takenId } from './shared/split-segment';
import { noStation } from './shared/stations';

/** Puts a splice on a segment: on the node at its end, else on a new node that splits it. */
export const splicePlaceOnSegment = command({
  id: 'splice.place-on-segment',
  label: 'Place splice on segment',
  args: z.strictObject({
    splice: Id,
    station: Station,
    /** Ids to give to the new node and to the part of the segment behind it. */
    node: Id.optional(),
    segment: Id.optional(),
  }),
  refuse: (project, { splice, station, node, segment }) =>
    missing(project, 'splices', [splice], 'splice') ??
    takenId(project, 'nodes', node) ??
    takenId(project, 'segments', segment) ??
    noStation(project, station),
  run(draft, { splice, station, node, segment }, { newId }, project) {
    const at = endAt(project, station) ?? splitSegment(draft, project, station, newId, { node, segment });
    draftObject(draft, project, 'splices', splice).node = at;
  },
});
