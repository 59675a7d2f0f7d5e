import { type z } from 'zod';
import { approversNeeded, approversOf } from '../../model/approvals';
import { Decision, DecisionBasis } from '../../model/decision';
import type { Project } from '../../model/project';

/** A record as it is handed in: it gets its number here, and what happens later is not part of it. */
export const NewDecision = Decision.omit({ number: true, uses: true, closed: true }).extend({
  id: Decision.shape.id.optional(),
  basis: DecisionBasis,
});
export type NewDecision = z.infer<typeof NewDecision>;

/** Why a record is not complete enough to be evidence, in words; null when it is. */
export function incomplete(project: Project, decision: NewDecision): string | null {
  const blank = (['finding', 'requirement', 'measured', 'reason', 'requester'] as const).find(
    (field) => decision[field].trim() === '',
  );
  if (blank) return `The record says nothing about: ${blank}.`;
  const { expiresOn, quantity, decidedOn, approvals } = decision;
  if (expiresOn === undefined && quantity === undefined)
    return 'Name a last day or a quantity: there are no open-ended permits.';
  if (expiresOn !== undefined && expiresOn < decidedOn)
    return `It would expire on ${expiresOn}, before it was decided on ${decidedOn}.`;
  if (approvals.some((a) => a.name.trim() === '' || a.role.trim() === ''))
    return 'Each approver has a name and a role.';
  const late = approvals.find((a) => a.date > decidedOn);
  if (late) return `${late.name} approved on ${late.date}, after the decision of ${decidedOn}.`;
  const needed = approversNeeded(project.regulated, decision.basis.severity);
  if (approversOf(decision, decidedOn) < needed)
    return needed === 1
      ? 'Name who approved it, with the role.'
      : 'A critical finding of a regulated project needs two approvers with different names.';
  return null;
}

/** D-1, D-2, …: one more than the highest, so that a number is never given twice. */
export function nextDecisionNumber(project: Pick<Project, 'decisions'>): number {
  const numbers = project.decisions.map((d) => Number(/^D-(\d+)$/.exec(d.number)?.[1] ?? 0));
  return numbers.reduce((most, n) => Math.max(most, n), 0) + 1;
}
