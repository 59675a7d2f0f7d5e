import { z } from 'zod';
import { Colour } from '../model/colour';
import { Id } from '../model/ids';
import { WirePart } from '../model/parts/wire';
import { command } from './command';
import { draftObject, missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

/** Contacts stay as they are: the rules say whether they still fit, and offer the one that does. */
export const wireSetPart = command({
  id: 'wire.set-part',
  label: 'Change wire part',
  args: z.strictObject({ ids: z.array(Id), part: WirePart, colour: Colour.optional() }),
  refuse: (project, { ids }) => missing(project, 'wires', ids, 'wire'),
  run(draft, { ids, part, colour }, _context, project) {
    const partId = embedPart(draft, project, part);
    for (const id of ids) {
      const wire = draftObject(draft, project, 'wires', id);
      wire.part = partId;
      if (colour) wire.colour = colour;
    }
  },
});
