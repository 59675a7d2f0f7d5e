import { z } from 'zod';
import { must } from '../base/assert-never';
import { quantityLeft } from '../model/approvals';
import { DecisionUse } from '../model/decision';
import { Id } from '../model/ids';
import { command } from './command';

/** Harnesses built under a decision with a quantity. When none is left the finding is open again. */
export const decisionUse = command({
  id: 'decision.use',
  label: 'Record use of a decision',
  args: z.strictObject({ decision: Id, use: DecisionUse }),
  refuse(project, { decision, use }) {
    const found = project.decisions.find((d) => d.id === decision);
    if (!found) return 'There is no such decision.';
    if (found.closed) return `${found.number} was closed on ${found.closed.date}.`;
    const left = quantityLeft(found);
    if (left === null) return `${found.number} is not bound to a quantity.`;
    if (use.quantity > left) return `${found.number} has ${left} left, not ${use.quantity}.`;
    if (found.expiresOn !== undefined && use.date > found.expiresOn)
      return `${found.number} expired with ${found.expiresOn}.`;
    return null;
  },
  run(draft, { decision, use }, _context, project) {
    const at = project.decisions.findIndex((d) => d.id === decision);
    const found = must(draft.decisions[at], 'decision');
    found.uses = [...(found.uses ?? []), use];
  },
});
