import { approversNeeded, approversOf, quantityLeft } from '../model/approvals';
import type { Decision } from '../model/decision';
import type { Project } from '../model/project';
import type { Finding } from '../rules/finding';
import { basisChanges, type BasisChange } from './basis';

/** Whether a decision covers a finding on a day, and if not, why not. */
export type Holding =
  | { readonly state: 'holds' }
  | { readonly state: 'not-yet'; readonly from: string }
  | { readonly state: 'closed'; readonly on: string }
  | { readonly state: 'unbounded' }
  | { readonly state: 'expired'; readonly on: string }
  | { readonly state: 'exhausted'; readonly quantity: number }
  | { readonly state: 'under-approved'; readonly approvers: number; readonly needed: number }
  | { readonly state: 'changed'; readonly changes: readonly BasisChange[] };

/** Judges one decision on the day `date` (YYYY-MM-DD). It holds through the whole of its last day. */
export function holdingOf(project: Project, decision: Decision, finding: Finding, date: string): Holding {
  if (decision.decidedOn > date) return { state: 'not-yet', from: decision.decidedOn };
  if (decision.closed && decision.closed.date <= date) return { state: 'closed', on: decision.closed.date };
  const { expiresOn, quantity } = decision;
  if (expiresOn === undefined && quantity === undefined) return { state: 'unbounded' };
  if (expiresOn !== undefined && date > expiresOn) return { state: 'expired', on: expiresOn };
  const left = quantityLeft(decision);
  if (quantity !== undefined && left !== null && left <= 0) return { state: 'exhausted', quantity };
  const needed = approversNeeded(project.regulated, finding.severity);
  const approvers = approversOf(decision, date);
  if (approvers < needed) return { state: 'under-approved', approvers, needed };
  const changes = basisChanges(project, decision, finding);
  return changes.length > 0 ? { state: 'changed', changes } : { state: 'holds' };
}
