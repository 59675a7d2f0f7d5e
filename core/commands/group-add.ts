import { z } from 'zod';
import { Id } from '../model/ids';
import { Group } from '../model/wire';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { missing, objectIn } from './shared/draft-object';

export const groupAdd = command({
  id: 'group.add',
  label: 'Group wires',
  args: z.strictObject({ ...Group.shape, id: Id.optional(), designator: z.string().min(1).optional() }),
  refuse(project, { wires }) {
    if (wires.length < 2) return 'A group needs two wires or more.';
    const gone = missing(project, 'wires', wires, 'wire');
    if (gone) return gone;
    const other = project.groups.find((g) => g.wires.some((w) => wires.includes(w)));
    const shared = other?.wires.find((w) => wires.includes(w));
    return other && shared
      ? `${objectIn(project, 'wires', shared)?.designator} is in group ${other.designator} already.`
      : null;
  },
  run(draft, { id, designator, ...rest }, { newId }, project) {
    draft.groups.push({
      id: id ?? newId(),
      designator: designator ?? nextDesignator(LETTERS.groups, project.groups),
      ...rest,
    });
  },
});
