import { z } from 'zod';
import { Id } from '../model/ids';
import { command } from './command';
import { draftObject, missing } from './shared/draft-object';

/** Lets wires take the shortest way again. */
export const wireUnpinPath = command({
  id: 'wire.unpin-path',
  label: 'Unpin path',
  args: z.strictObject({ wires: z.array(Id) }),
  refuse: (project, { wires }) => missing(project, 'wires', wires, 'wire'),
  run(draft, { wires }, _context, project) {
    for (const id of wires) delete draftObject(draft, project, 'wires', id).path;
  },
});
