import type { Harness } from '../derive/harness';
import type { CheckResult } from '../rules/check-harness';
import { SEVERITIES, type Finding } from '../rules/finding';
import { documentHead } from './document-head';
import type { Exporter } from './exporter';
import { decisionText, evidenceText, needText, RESULT_WORDS } from './findings/finding-words';
import { toldFindings } from './findings/told-findings';
import type { Cell, Column, Table } from './table';

const COLUMNS = [
  { key: 'number', title: 'No.', align: 'right' },
  { key: 'severity', title: 'Severity' },
  { key: 'result', title: 'Result' },
  { key: 'open', title: 'Open point' },
  { key: 'objects', title: 'Objects' },
  { key: 'message', title: 'Finding' },
  { key: 'evidence', title: 'Values used' },
  { key: 'needs', title: 'Needed to verify' },
  { key: 'rule', title: 'Rule' },
  { key: 'ruleRevision', title: 'Rule revision', align: 'right' },
  { key: 'source', title: 'Source of the rule' },
  { key: 'fix', title: 'Fix offered' },
  { key: 'decision', title: 'Decision on record' },
  { key: 'key', title: 'Key' },
] as const satisfies readonly Column[];

/** Every finding with its working, gravest first; and, in the head, how much was asked, so that silence can be told from absence. */
export const findingsReport: Exporter = {
  id: 'findings-report',
  title: 'Findings report',
  summary: 'Every finding with the values used, where each comes from, and the decision on it.',
  table: findingsTable,
};

function findingsTable(harness: Harness, check: CheckResult): Table {
  const told = toldFindings(harness.project, check.findings);
  return {
    id: findingsReport.id,
    title: findingsReport.title,
    head: documentHead(harness.project, findingsReport.title, summaryOf(check)),
    columns: [...COLUMNS],
    rows: told.map(
      ({ finding, meta, where, message, decisions }, i): Record<(typeof COLUMNS)[number]['key'], Cell> => ({
        number: i + 1,
        severity: finding.severity,
        result: RESULT_WORDS[finding.result],
        open: finding.open ? 'yes' : null,
        objects: where,
        message,
        evidence: finding.evidence.map(evidenceText).join('; ') || null,
        needs: finding.needs.map(needText).join('; ') || null,
        rule: finding.rule,
        ruleRevision: finding.ruleRevision,
        source: meta?.source ?? null,
        fix: finding.fix?.label ?? null,
        decision: decisions.map((d) => decisionText(d, finding)).join('; ') || null,
        key: finding.key,
      }),
    ),
    objects: told.map(({ finding }) => [...finding.objects]),
  };
}

function summaryOf(check: CheckResult): [string, string][] {
  const count = (severity: string, result: Finding['result']): number =>
    check.findings.filter((f) => f.severity === severity && f.result === result).length;
  const tally = [...check.tally().values()];
  const passed = tally.reduce((n, t) => n + t.pass, 0);
  return [
    ['Checks passed', `${passed} by ${tally.length} rules`],
    ...SEVERITIES.map((s): [string, string] => [
      `Findings, ${s}`,
      `${count(s, 'fail')} fail, ${count(s, 'cannot-verify')} cannot verify`,
    ]),
  ];
}
