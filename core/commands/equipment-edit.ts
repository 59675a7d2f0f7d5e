import { z } from 'zod';
import { Board, Panel } from '../model/equipment';
import { Id } from '../model/ids';
import { command } from './command';
import { applyChange, draftObject, missing, objectIn } from './shared/draft-object';

const { designator, description, widthMm, heightMm, thicknessMm, solderProcess } = Board.shape;

export const equipmentEdit = command({
  id: 'equipment.edit',
  label: 'Edit equipment',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      designator: designator.optional(),
      description: description.nullable(),
      widthMm: widthMm.optional(),
      heightMm: heightMm.optional(),
      thicknessMm: thicknessMm.nullable(),
      solderProcess: solderProcess.nullable(),
      coatingsMm: Panel.shape.coatingsMm.nullable(),
    }),
  }),
  refuse(project, { id, change }) {
    const gone = missing(project, 'equipment', [id], 'equipment');
    if (gone) return gone;
    const kind = objectIn(project, 'equipment', id)?.kind;
    if (change.solderProcess && kind !== 'board') return 'Only a board has a solder process.';
    if (typeof change.coatingsMm === 'number' && kind !== 'panel') return 'Only a panel has coatings.';
    if (typeof change.thicknessMm === 'number' && kind === 'device') return 'A device has no thickness.';
    return null;
  },
  run(draft, { id, change }, _context, project) {
    applyChange(draftObject(draft, project, 'equipment', id) as object, change);
  },
});
