import type { Decision } from '../model/decision';
import type { Project } from '../model/project';
import type { Finding } from '../rules/finding';
import { findingText } from '../rules/finding-text';
import type { RuleMeta } from '../rules/rule';
import { basisOf } from './basis';

/** The fields of a record that follow from the finding itself, ready for a form. */
export type PrefilledDecision = Pick<
  Decision,
  'finding' | 'rule' | 'ruleRevision' | 'requirement' | 'measured' | 'limit'
> & { readonly basis: NonNullable<Decision['basis']> };

/** Names under which rules put what they measured and what they compared it with. */
const MEASURED = ['measured', 'thickness', 'protrusion', 'found', 'problem', 'reason'] as const;
const LIMIT = ['limit', 'range', 'needed'] as const;

export function draftDecision(
  project: Project,
  finding: Finding,
  meta: RuleMeta | undefined,
): PrefilledDecision {
  const first = (names: readonly string[]): string =>
    String(names.map((n) => finding.data[n]).find((v) => v !== undefined) ?? '');
  return {
    finding: finding.key,
    rule: finding.rule,
    ruleRevision: finding.ruleRevision,
    requirement: meta?.summary ?? finding.rule,
    measured:
      finding.result === 'fail'
        ? withUnit(first(MEASURED), finding) || (meta ? findingText(finding, meta) : finding.rule)
        : `cannot verify, missing: ${finding.needs.map((n) => n.what).join(', ')}`,
    limit: withUnit(first(LIMIT), finding),
    basis: basisOf(project, finding),
  };
}

/** A bare number is told with the unit of the evidence that has the same value. */
function withUnit(text: string, finding: Finding): string {
  const unit = finding.evidence.find((e) => String(e.value) === text)?.unit;
  return unit ? `${text} ${unit}` : text;
}
