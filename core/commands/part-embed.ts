import { z } from 'zod';
import { Part } from '../model/parts/part';
import { command } from './command';

export const partEmbed = command({
  id: 'part.embed',
  label: 'Update part record',
  args: z.strictObject({ part: Part }),
  refuse(project, { part }) {
    const known = project.parts.find((p) => p.id === part.id);
    return known && known.kind !== part.kind
      ? `${known.partNumber} is a ${known.kind}, not a ${part.kind}.`
      : null;
  },
  run(draft, { part }, _context, project) {
    const at = project.parts.findIndex((p) => p.id === part.id);
    if (at < 0) draft.parts.push(part);
    else draft.parts[at] = part;
  },
});
