import { z } from 'zod';
import { Board, Device, Panel } from '../model/equipment';
import { Id } from '../model/ids';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';

const mine = { id: Id.optional(), designator: z.string().min(1).optional() };

export const equipmentAdd = command({
  id: 'equipment.add',
  label: 'Add equipment',
  args: z.strictObject({
    equipment: z.discriminatedUnion('kind', [Board.extend(mine), Panel.extend(mine), Device.extend(mine)]),
  }),
  refuse: () => null,
  run(draft, { equipment }, { newId }, project) {
    const designator = equipment.designator ?? nextDesignator(LETTERS[equipment.kind], project.equipment);
    draft.equipment.push({ ...equipment, id: equipment.id ?? newId(), designator });
  },
});
