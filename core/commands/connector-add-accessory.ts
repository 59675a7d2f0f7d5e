import { z } from 'zod';
import { Id } from '../model/ids';
import { Part } from '../model/parts/part';
import { command } from './command';
import { draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

export const connectorAddAccessory = command({
  id: 'connector.add-accessory',
  label: 'Fit accessory',
  args: z.strictObject({ id: Id, part: Part, quantity: z.int().positive().optional() }),
  refuse: (project, { id }) => missing(project, 'connectors', [id], 'connector'),
  run(draft, { id, part, quantity }, { newId }, project) {
    const connector = draftObject(draft, project, 'connectors', id);
    connector.accessories.push({
      id: newId(),
      part: embedPart(draft, project, part),
      quantity: quantity ?? 1,
    });
  },
});
