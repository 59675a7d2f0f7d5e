import { z } from 'zod';
import { Purchasing, ScrapShares } from '../model/purchasing';
import { command } from './command';
import { applyChange, missing } from './shared/draft-object';

const p = Purchasing.shape;
const { contact: share } = ScrapShares.shape;

/** Null goes back to common practice. */
export const projectEditPurchasing = command({
  id: 'project.edit-purchasing',
  label: 'Edit purchasing',
  args: z.strictObject({
    change: z.strictObject({
      currency: p.currency.nullable(),
      setUpPieces: p.setUpPieces.nullable(),
      samplesPerCrimp: p.samplesPerCrimp.nullable(),
      runWasteMm: p.runWasteMm.nullable(),
      harnessesPerSetUp: p.harnessesPerSetUp.nullable(),
      stock: p.stock.nullable(),
      scrap: z.partialRecord(ScrapShares.keyof(), share.nullable()).optional(),
    }),
  }),
  refuse: (project, { change }) =>
    missing(project, 'parts', change.stock?.map((s) => s.part) ?? [], 'part record'),
  run(draft, { change: { scrap, ...rest } }, _context, project) {
    const purchasing = { ...project.purchasing };
    applyChange(purchasing, rest);
    if (scrap) {
      purchasing.scrap = { ...purchasing.scrap };
      applyChange(purchasing.scrap, scrap);
      if (Object.keys(purchasing.scrap).length === 0) delete purchasing.scrap;
    }
    if (Object.keys(purchasing).length === 0) delete draft.purchasing;
    else if (JSON.stringify(purchasing) !== JSON.stringify(project.purchasing)) draft.purchasing = purchasing;
  },
});
