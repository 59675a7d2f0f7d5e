import { boundText, KIND_WORDS } from '../../decisions/standing-words';
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

/** Names the record and the rule revision it was made against; whether it still holds is told by the standing. */
export function decisionText(d: Decision, finding: Finding): string {
  const until = d.expiresOn ? `, expires ${d.expiresOn}` : '';
  const older =
    d.ruleRevision === finding.ruleRevision ? '' : `, made against rule revision ${d.ruleRevision}`;
  return `${KIND_WORDS[d.kind]} ${d.number} of ${d.decidedOn}${until}${older}`;
}

/** A whole record in one line. */
export function recordText(d: Decision): string {
  const approvals = d.approvals.map((a) => `${a.name} (${a.role}, ${a.date})`).join(', ');
  return [
    `${KIND_WORDS[d.kind]} ${d.number} of ${d.decidedOn} on ${d.rule} revision ${d.ruleRevision}`,
    `requirement: ${d.requirement}`,
    `actual: ${d.measured}`,
    ...(d.limit ? [`limit: ${d.limit}`] : []),
    ...(d.items ? [`items: ${d.items}`] : []),
    `reason: ${d.reason}`,
    ...(d.risk ? [`risk: ${d.risk}`] : []),
    ...(d.mitigation ? [`mitigation: ${d.mitigation}`] : []),
    ...(d.conditions ? [`conditions: ${d.conditions}`] : []),
    `requested by ${d.requester}`,
    `approved by ${approvals || 'nobody'}`,
    `holds ${boundText(d) || 'without end'}`,
    ...(d.closed ? [`closed on ${d.closed.date} by ${d.closed.by}: ${d.closed.reason}`] : []),
  ].join('; ');
}
