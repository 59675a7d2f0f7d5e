import { standingText } from '../decisions/standing-words';
import type { Project } from '../model/project';
import { documentHead } from './document-head';
import type { DocumentInput, Exporter } from './exporter';
import { decisionText, evidenceText, needText, recordText, RESULT_WORDS } from './findings/finding-words';
import { findingsPaper } from './findings/findings-paper';
import { reportSummary } from './findings/report-summary';
import { limitText, tableChoiceText } from './findings/limit-words';
import { toldFindings, type ToldFinding } from './findings/told-findings';
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
  { key: 'standing', title: 'Standing' },
  { key: 'decision', title: 'Decision on record' },
  { key: 'key', title: 'Key' },
] as const satisfies readonly Column[];

/** Every finding with its working, gravest first; and, in the head, how much was asked, so that silence can be told from absence. */
export const findingsReport: Exporter = {
  id: 'findings-report',
  title: 'Findings report',
  summary: 'Every finding with the values used, where each comes from, and the decision on it.',
  table: findingsTable,
  paper: ({ harness, check, date }) => findingsPaper(findingsReport.title, harness, check, date),
};

function findingsTable({ harness, check, date }: DocumentInput): Table {
  const { project } = harness;
  const told = toldFindings(project, check.findings, date);
  return {
    id: findingsReport.id,
    title: findingsReport.title,
    head: documentHead(project, findingsReport.title, [
      ...reportSummary(project, check, date),
      ...decisionLines(project),
      ...project.limitSet.limits.map((l) => ['Limit', limitText(l)] as const),
      ...(project.limitSet.tables ?? []).map((t) => ['Limit', tableChoiceText(t)] as const),
    ]),
    columns: [...COLUMNS],
    rows: told.map((t, i) => rowOf(t, i + 1)),
    objects: told.map(({ finding }) => [...finding.objects]),
  };
}

function rowOf(
  { finding, meta, where, message, decisions, standing }: ToldFinding,
  number: number,
): Record<(typeof COLUMNS)[number]['key'], Cell> {
  return {
    number,
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
    standing: standingText(standing),
    decision: decisions.map((d) => decisionText(d, finding)).join('; ') || null,
    key: finding.key,
  };
}

/** All that is on record, also what concerns findings that are gone. */
const decisionLines = (project: Project): (readonly [string, string])[] =>
  project.decisions.map((d) => ['Decision', recordText(d)] as const);
