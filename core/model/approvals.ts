import type { Decision } from './decision';

/** Regulated projects ask for two named people on what is critical; everywhere else a decision has one at least. */
export const approversNeeded = (regulated: boolean, severity: string): number =>
  regulated && severity === 'critical' ? 2 : 1;

/** How many different people approved by a day. The same name in another spelling of case or space is one person. */
export const approversOf = (decision: Pick<Decision, 'approvals'>, date: string): number =>
  new Set(decision.approvals.filter((a) => a.date <= date).map((a) => personKey(a.name))).size;

const personKey = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();

/** Harnesses that are left of the quantity, null where none was named. */
export const quantityLeft = (decision: Pick<Decision, 'quantity' | 'uses'>): number | null =>
  decision.quantity === undefined
    ? null
    : decision.quantity - (decision.uses ?? []).reduce((sum, use) => sum + use.quantity, 0);
