import { z } from 'zod';
import { Id } from '../model/ids';
import { command } from './command';
import { draftObject, missing, objectIn } from './shared/draft-object';

export const connectorRemoveAccessory = command({
  id: 'connector.remove-accessory',
  label: 'Take accessory off',
  args: z.strictObject({ id: Id, accessory: Id }),
  refuse: (project, { id, accessory }) =>
    missing(project, 'connectors', [id], 'connector') ??
    (objectIn(project, 'connectors', id)?.accessories.some((a) => a.id === accessory)
      ? null
      : 'It is not fitted there.'),
  run(draft, { id, accessory }, _context, project) {
    const connector = draftObject(draft, project, 'connectors', id);
    connector.accessories = connector.accessories.filter((a) => a.id !== accessory);
  },
});
