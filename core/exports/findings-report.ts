import { compareNatural, compareText } from '../base/stable-order';
import type { Harness } from '../derive/harness';
import type { Decision } from '../model/decision';
import type { CheckResult } from '../rules/check-harness';
import { SEVERITIES, type Evidence, type Finding, type Need } from '../rules/finding';
import { findingText } from '../rules/finding-text';
import { RULES } from '../rules/index';
import { refText } from '../rules/refs';
import type { RuleMeta } from '../rules/rule';
import { documentHead } from './document-head';
import type { Exporter } from './exporter';
import type { Cell, Column, Table } from './table';

const COLUMNS = [
  { key: 'number', title: 'No.', align: 'right' },
  { key: 'severity', title: 'Severity' },
  { key: 'result', title: 'Result' },
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
  const { project } = harness;
  const metas = new Map(RULES.map((r) => [r.meta.id, r.meta]));
  const decisions = decisionsByFinding(project.decisions);
  const rows = check.findings
    .map((finding) => ({ finding, where: finding.objects.map((o) => refText(project, o)).join(', ') }))
    .sort(
      (a, b) =>
        SEVERITIES.indexOf(a.finding.severity) - SEVERITIES.indexOf(b.finding.severity) ||
        compareText(a.finding.rule, b.finding.rule) ||
        compareNatural(a.where, b.where) ||
        compareText(a.finding.key, b.finding.key),
    );
  return {
    id: findingsReport.id,
    title: findingsReport.title,
    head: documentHead(project, findingsReport.title, summaryOf(check)),
    columns: [...COLUMNS],
    rows: rows.map(({ finding, where }, i): Record<(typeof COLUMNS)[number]['key'], Cell> => {
      const meta = metas.get(finding.rule);
      return {
        number: i + 1,
        severity: finding.severity,
        result: RESULT_WORDS[finding.result],
        objects: where,
        message: messageOf(finding, meta),
        evidence: finding.evidence.map(evidenceText).join('; ') || null,
        needs: finding.needs.map(needText).join('; ') || null,
        rule: finding.rule,
        ruleRevision: finding.ruleRevision,
        source: meta?.source ?? null,
        fix: finding.fix?.label ?? null,
        decision: (decisions.get(finding.key) ?? []).map((d) => decisionText(d, finding)).join('; ') || null,
        key: finding.key,
      };
    }),
    objects: rows.map(({ finding }) => [...finding.objects]),
  };
}

const RESULT_WORDS = { fail: 'fail', 'cannot-verify': 'cannot verify' } as const;

/** A finding of a rule outside the book (an example's own rule) still shows its data. */
const messageOf = (finding: Finding, meta: RuleMeta | undefined): string =>
  meta ? findingText(finding, meta) : JSON.stringify(finding.data);

/** "crimp height = 1.2 mm (catalogue Bench 3, contact C-1)". */
export const evidenceText = (e: Evidence): string =>
  `${e.label} = ${e.value}${e.unit ? ` ${e.unit}` : ''} (${e.source})`;

const needText = (n: Need): string => (n.field ? `${n.what} [${n.field}]` : n.what);

/** Names the record and what has changed since; whether it still holds is not decided here. */
function decisionText(d: Decision, finding: Finding): string {
  const kind = d.kind === 'concession' ? 'concession' : 'deviation permit';
  const until = d.expiresOn ? `, expires ${d.expiresOn}` : '';
  const older =
    d.ruleRevision === finding.ruleRevision ? '' : `, made against rule revision ${d.ruleRevision}`;
  return `${kind} ${d.number} of ${d.decidedOn}${until}${older}`;
}

function decisionsByFinding(decisions: readonly Decision[]): ReadonlyMap<string, readonly Decision[]> {
  const out = new Map<string, Decision[]>();
  for (const d of decisions) out.set(d.finding, [...(out.get(d.finding) ?? []), d]);
  return out;
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
