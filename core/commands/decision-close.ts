import { z } from 'zod';
import { must } from '../base/assert-never';
import { Decision } from '../model/decision';
import { Id } from '../model/ids';
import { command } from './command';

/** Ends a decision before its time. The record stays. */
export const decisionClose = command({
  id: 'decision.close',
  label: 'Close decision',
  args: z.strictObject({ decision: Id, closed: Decision.shape.closed.unwrap() }),
  refuse(project, { decision, closed }) {
    const found = project.decisions.find((d) => d.id === decision);
    if (!found) return 'There is no such decision.';
    if (found.closed) return `${found.number} was closed on ${found.closed.date} already.`;
    return closed.date < found.decidedOn ? `${found.number} was decided on ${found.decidedOn}.` : null;
  },
  run(draft, { decision, closed }, _context, project) {
    const at = project.decisions.findIndex((d) => d.id === decision);
    must(draft.decisions[at], 'decision').closed = closed;
  },
});
