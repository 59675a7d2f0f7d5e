import { z } from 'zod';
import { Id } from '../model/ids';
import { Wire } from '../model/wire';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

const { designator, colour, signal, lengthMm, extraMm, path, note } = Wire.shape;

export const wireEdit = command({
  id: 'wire.edit',
  label: 'Edit wire',
  args: z.strictObject({
    ids: z.array(Id),
    change: z.strictObject({
      designator: designator.optional(),
      colour: colour.nullable(),
      signal: signal.nullable(),
      lengthMm: lengthMm.nullable(),
      extraMm: extraMm.nullable(),
      path: path.nullable(),
      note: note.nullable(),
    }),
  }),
  refuse: (project, { ids, change }) =>
    missing(project, 'wires', ids, 'wire') ??
    missing(project, 'signals', [change.signal ?? undefined], 'signal') ??
    missing(project, 'segments', change.path ?? [], 'segment'),
  run(draft, { ids, change }, _context, project) {
    for (const id of ids) applyChange(draftObject(draft, project, 'wires', id), change);
  },
});
