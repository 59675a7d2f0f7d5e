import { assertNever } from '../base/assert-never';
import { quantityLeft } from '../model/approvals';
import type { Decision } from '../model/decision';
import type { BasisChange } from './basis';
import type { Judged, Standing } from './standing';

export const KIND_WORDS = { 'deviation-permit': 'deviation permit', 'concession': 'concession' } as const; // prettier-ignore

/** "accepted: deviation permit D-1 until 2026-06-30". */
export const standingText = (standing: Standing): string =>
  standing.by ? `${standing.state}: ${judgedText(standing.by)}` : standing.state;

/** One decision and how it stands to its finding. */
export function judgedText({ decision, holding }: Judged): string {
  const name = `${KIND_WORDS[decision.kind]} ${decision.number}`;
  switch (holding.state) {
    case 'holds':
      return `${name} ${boundText(decision)}`;
    case 'not-yet':
      return `${name} is dated ${holding.from}`;
    case 'closed':
      return `${name} was closed on ${holding.on}`;
    case 'unbounded':
      return `${name} names neither an expiry nor a quantity`;
    case 'expired':
      return `${name} expired with ${holding.on}`;
    case 'exhausted':
      return `${name} is used up: ${holding.quantity} of ${holding.quantity}`;
    case 'under-approved':
      return `${name} has ${holding.approvers} of ${holding.needed} approvers`;
    case 'changed':
      return `${name} was made on other values: ${holding.changes.map(changeText).join('; ')}`;
    default:
      return assertNever(holding);
  }
}

/** "until 2026-06-30, 3 of 5 left". */
export function boundText(decision: Decision): string {
  const left = quantityLeft(decision);
  return [
    ...(decision.expiresOn ? [`until ${decision.expiresOn}`] : []),
    ...(left === null ? [] : [`${Math.max(0, left)} of ${decision.quantity} left`]),
  ].join(', ');
}

export const changeText = ({ label, before, after }: BasisChange): string =>
  `${label} was ${before ?? 'not there'}, is ${after ?? 'no longer there'}`;
