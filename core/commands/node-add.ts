import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from '../model/ids';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { draftObject, missing } from './shared/draft-object';

/** A point on the formboard; connectors named here are put on it. */
export const nodeAdd = command({
  id: 'node.add',
  label: 'Add node',
  args: z.strictObject({
    position: Point,
    designator: z.string().min(1).optional(),
    connectors: z.array(Id).optional(),
    id: Id.optional(),
  }),
  refuse: (project, { connectors }) => missing(project, 'connectors', connectors ?? [], 'connector'),
  run(draft, { position, designator, connectors, id }, { newId }, project) {
    const node = id ?? newId();
    draft.nodes.push({
      id: node,
      designator: designator ?? nextDesignator(LETTERS.nodes, project.nodes),
      position,
    });
    for (const c of connectors ?? []) draftObject(draft, project, 'connectors', c).node = node;
  },
});
