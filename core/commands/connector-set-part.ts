import { z } from 'zod';
import { Id } from '../model/ids';
import { HeaderPart } from '../model/parts/header';
import { HousingPart } from '../model/parts/housing';
import { command } from './command';
import { draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

/** Wires, contacts and states stay where they are; what no longer fits becomes a finding. */
export const connectorSetPart = command({
  id: 'connector.set-part',
  label: 'Change connector part',
  args: z.strictObject({ id: Id, part: z.discriminatedUnion('kind', [HousingPart, HeaderPart]) }),
  refuse: (project, { id }) => missing(project, 'connectors', [id], 'connector'),
  run(draft, { id, part }, _context, project) {
    draftObject(draft, project, 'connectors', id).part = embedPart(draft, project, part);
  },
});
