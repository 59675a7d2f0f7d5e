import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { standingText } from '@latchwork/core/decisions/standing-words';
import { decisionText } from '@latchwork/core/exports/findings/finding-words';
import { type ToldFinding } from '@latchwork/core/exports/findings/told-findings';
import { type CheckResult } from '@latchwork/core/rules/check-harness';
import { type ObjectRef, SEVERITIES, type Severity } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { RULES } from '@latchwork/core/rules/index';

/**
 * `latchwork check --json`. Fields keep their name and meaning while `formatVersion` stays; new ones may come. The
 * order of findings and keys is fixed: the same project gives the same bytes.
 */
export function checkJson(
  result: CheckResult,
  told: readonly ToldFinding[],
  failOn: Severity,
  date: string,
): string {
  const { project } = result.harness;
  const tally = result.tally();
  const count = (severity: Severity, kind: 'fail' | 'cannot-verify'): number =>
    told.filter((t) => t.finding.severity === severity && t.finding.result === kind).length;
  const objectOf = (ref: ObjectRef) => ({ ...ref, text: refText(project, ref) });
  const answer = {
    format: 'latchwork-check',
    formatVersion: 1,
    caution: AID_NOT_AUTHORITY,
    project: {
      id: project.id,
      title: project.titleBlock.title,
      identificationNumber: project.titleBlock.identificationNumber,
      revision: project.revisions.at(-1)?.revision ?? null,
    },
    limitSet: { name: project.limitSet.name, revision: project.limitSet.revision },
    failOn,
    date,
    summary: Object.fromEntries(
      SEVERITIES.map((s) => [s, { fail: count(s, 'fail'), cannotVerify: count(s, 'cannot-verify') }]),
    ),
    rules: RULES.map(({ meta }) => ({
      id: meta.id,
      revision: meta.revision,
      severity: meta.severity,
      ...(tally.get(meta.id) ?? { pass: 0, fail: 0, cannotVerify: 0 }),
    })),
    accepted: told.filter((t) => t.standing?.state === 'accepted').length,
    findings: told.map(({ finding, message, decisions, standing }) => ({
      key: finding.key,
      rule: finding.rule,
      ruleRevision: finding.ruleRevision,
      severity: finding.severity,
      result: finding.result,
      open: finding.open,
      objects: finding.objects.map(objectOf),
      message,
      data: finding.data,
      evidence: finding.evidence,
      needs: finding.needs.map((n) => ({ ...n, ...(n.at ? { at: objectOf(n.at) } : {}) })),
      fix: finding.fix ? { label: finding.fix.label, command: finding.fix.command } : null,
      standing: standing && { state: standing.state, text: standingText(standing) },
      decisions: decisions.map((d) => ({ number: d.number, kind: d.kind, text: decisionText(d, finding) })),
    })),
  };
  return `${JSON.stringify(answer, null, 2)}\n`;
}
