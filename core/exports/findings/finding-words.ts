import type { Decision } from '../../model/decision';
import type { Evidence, Finding, Need } from '../../rules/finding';
import { findingText } from '../../rules/finding-text';
import type { RuleMeta } from '../../rules/rule';

export const RESULT_WORDS = { fail: 'fail', 'cannot-verify': 'cannot verify' } as const;

/** The sentence of a finding; one of a rule outside the book (an example's own) still shows its data. */
export const messageOf = (finding: Finding, meta: RuleMeta | undefined): string =>
  meta ? findingText(finding, meta) : JSON.stringify(finding.data);

/** "crimp height = 1.2 mm (catalogue Bench 3, contact C-1)". */
export const evidenceText = (e: Evidence): string =>
  `${e.label} = ${e.value}${e.unit ? ` ${e.unit}` : ''} (${e.source})`;

export const needText = (n: Need): string => (n.field ? `${n.what} [${n.field}]` : n.what);

/** Names the record and what has changed since; whether it still holds is not decided here. */
export function decisionText(d: Decision, finding: Finding): string {
  const kind = d.kind === 'concession' ? 'concession' : 'deviation permit';
  const until = d.expiresOn ? `, expires ${d.expiresOn}` : '';
  const older =
    d.ruleRevision === finding.ruleRevision ? '' : `, made against rule revision ${d.ruleRevision}`;
  return `${kind} ${d.number} of ${d.decidedOn}${until}${older}`;
}
