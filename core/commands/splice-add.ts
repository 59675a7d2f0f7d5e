import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from '../model/ids';
import { SplicePart } from '../model/parts/accessories';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

export const spliceAdd = command({
  id: 'splice.add',
  label: 'Add splice',
  args: z.strictObject({
    position: Point,
    part: SplicePart.optional(),
    designator: z.string().min(1).optional(),
    node: Id.optional(),
    id: Id.optional(),
  }),
  refuse: (project, { node }) => missing(project, 'nodes', [node], 'node'),
  run(draft, { position, part, designator, node, id }, { newId }, project) {
    draft.splices.push({
      id: id ?? newId(),
      designator: designator ?? nextDesignator(LETTERS.splices, project.splices),
      ...(part ? { part: embedPart(draft, project, part) } : {}),
      position,
      ...(node ? { node } : {}),
    });
  },
});
