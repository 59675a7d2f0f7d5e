import { z } from 'zod';
import { distance, Point } from '../base/point';
import { Id } from '../model/ids';
import { Station } from '../model/topology';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { draftObject, missing, objectIn } from './shared/draft-object';
import { endAt, splitSegment, takenId } from './shared/split-segment';
import { noStation } from './shared/stations';

/**
 * A branch from a station of a segment, or from a node, to a new end; connectors named here are put on the end. A station
 * within the segment splits it.
 */
export const branchInsert = command({
  id: 'branch.insert',
  label: 'Insert branch',
  args: z.strictObject({
    at: z.union([Station, z.strictObject({ node: Id })]),
    to: Point,
    connectors: z.array(Id).optional(),
    /** Ids to give to the end of the branch, to its segment, and to the node at its root. */
    end: Id.optional(),
    branch: Id.optional(),
    root: Id.optional(),
  }),
  refuse(project, { at, to, connectors, end, branch, root }) {
    const gone =
      missing(project, 'connectors', connectors ?? [], 'connector') ??
      takenId(project, 'nodes', end) ??
      takenId(project, 'segments', branch) ??
      takenId(project, 'nodes', root) ??
      ('node' in at ? missing(project, 'nodes', [at.node], 'node') : noStation(project, at));
    if (gone) return gone;
    const node = 'node' in at ? at.node : endAt(project, at);
    const start = node === undefined ? undefined : objectIn(project, 'nodes', node)?.position;
    return start && distance(start, to) < 0.1 ? 'A branch needs a length: end it away from its root.' : null;
  },
  run(draft, { at, to, connectors, end, branch, root }, { newId }, project) {
    const known = 'node' in at ? at.node : endAt(project, at);
    const from = known ?? ('node' in at ? at.node : splitSegment(draft, project, at, newId, { node: root }));
    const node = end ?? newId();
    draft.nodes.push({
      id: node,
      designator: nextDesignator(LETTERS.nodes, draft.nodes),
      position: to,
    });
    draft.segments.push({
      id: branch ?? newId(),
      designator: nextDesignator(LETTERS.segments, draft.segments),
      from,
      to: node,
    });
    for (const c of connectors ?? []) draftObject(draft, project, 'connectors', c).node = node;
  },
});
