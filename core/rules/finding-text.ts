import type { Finding } from './finding';
import type { RuleMeta } from './rule';

/** The sentence of a finding: the rule's message with its placeholders filled from the finding's data. */
export function findingText(finding: Finding, meta: Pick<RuleMeta, 'message' | 'unknown'>): string {
  const template = finding.result === 'fail' ? meta.message : meta.unknown;
  const needs = finding.needs.map((n) => n.what).join(', ');
  return template.replace(/\{\{(\w+)\}\}/g, (whole, name: string) =>
    name === 'needs' ? needs : String(finding.data[name] ?? whole),
  );
}
