import type { Holding } from '../../decisions/holding';
import { boundText, judgedText, KIND_WORDS } from '../../decisions/standing-words';
import type { Harness } from '../../derive/harness';
import { baselineOf } from '../../model/baseline';
import type { Decision } from '../../model/decision';
import type { Project } from '../../model/project';
import type { CheckResult } from '../../rules/check-harness';
import type { Evidence } from '../../rules/finding';
import { cautionsOf } from '../cautions';
import type { Paper, PaperBlock } from '../paper/paper';
import { markOfFinding } from '../paper/paper-mark';
import { needText, RESULT_WORDS } from './finding-words';
import { limitSource } from './limit-words';
import { reportSummary } from './report-summary';
import { toldFindings, type ToldFinding } from './told-findings';

/** The findings report as pages: what was asked, each finding with its working and its decisions, the limits used. */
export function findingsPaper(title: string, harness: Harness, check: CheckResult, date: string): Paper {
  const { project } = harness;
  const told = toldFindings(project, check.findings, date);
  const revision = project.revisions.at(-1);
  return {
    id: 'findings-report',
    title,
    titleBlock: project.titleBlock,
    revision: revision ? `${revision.revision} (${revision.status})` : 'not given',
    baseline: baselineOf(project),
    date,
    cautions: [...cautionsOf(project)],
    blocks: [
      { kind: 'heading', text: 'Summary' },
      {
        kind: 'fields',
        rows: [
          ...reportSummary(project, check, date),
          ['Limit set', `${project.limitSet.name}, revision ${project.limitSet.revision}`],
          ['Regulated use', project.regulated ? 'yes: critical findings need two approvers' : 'not marked'],
        ],
      },
      { kind: 'heading', text: `Findings (${told.length})` },
      ...(told.length === 0
        ? [{ kind: 'text' as const, text: [{ text: 'No finding. What was asked stands above.' }] }]
        : told.flatMap((t, i) => findingBlocks(t, i + 1))),
      ...recordBlocks(project, told),
      ...limitBlocks(project),
    ],
  };
}

function findingBlocks(told: ToldFinding, number: number): PaperBlock[] {
  const { finding, meta, where, message, standing } = told;
  const open = finding.open ? ', open point' : '';
  const judged = (standing?.judged ?? []).map(judgedText);
  return [
    {
      kind: 'matter',
      mark: markOfFinding(finding),
      name: `${number}  ${finding.severity}, ${RESULT_WORDS[finding.result]}${open}`,
      state: standing?.state ?? 'not judged',
    },
    { kind: 'text', text: [{ text: `${where}  `, look: 'code' }, { text: message }] },
    ...(finding.needs.length > 0 ? [textBlock('Missing: ', finding.needs.map(needText).join('; '))] : []),
    ...evidenceBlock(finding.evidence),
    ...(judged.length > 0 ? [textBlock('On record: ', judged.join('; '))] : []),
    {
      kind: 'text',
      text: [
        { text: `${finding.rule} `, look: 'code' },
        { text: `revision ${finding.ruleRevision}`, look: 'second' },
        ...(meta ? [{ text: `: ${meta.summary} Source: ${meta.source}`, look: 'second' as const }] : []),
      ],
    },
  ];
}

const textBlock = (label: string, text: string): PaperBlock => ({
  kind: 'text',
  text: [{ text: label, look: 'strong' }, { text }],
});

function evidenceBlock(evidence: readonly Evidence[]): PaperBlock[] {
  if (evidence.length === 0) return [];
  return [
    {
      kind: 'table',
      columns: [
        { title: 'Value used', share: 3 },
        { title: 'Amount', share: 2, align: 'right' },
        { title: 'From', share: 5 },
      ],
      rows: evidence.map((e) => [e.label, amountText(e.value, e.unit), e.source]),
    },
  ];
}

/** Paper has room for the signs that the data spell out. */
function amountText(value: string | number, unit: string | undefined): string {
  const sign = { degC: '°C', mm2: 'mm²', 'A/mm2': 'A/mm²' }[unit ?? ''] ?? unit;
  return sign ? `${value} ${sign}` : String(value);
}

const HOLDING_WORDS: Readonly<Record<Holding['state'], string>> = {
  'holds': 'holds',
  'not-yet': 'dated later',
  'closed': 'closed',
  'unbounded': 'open-ended',
  'expired': 'expired',
  'exhausted': 'used up',
  'under-approved': 'approver missing',
  'changed': 'values changed',
}; // prettier-ignore

/** The records in full, each with the finding that it is about, or that the finding is gone. */
function recordBlocks(project: Project, told: readonly ToldFinding[]): PaperBlock[] {
  if (project.decisions.length === 0) return [];
  const numbers = new Map(told.map((t, i) => [t.finding.key, `${i + 1} (${t.where})`]));
  const holdings = new Map(
    told.flatMap((t) => (t.standing?.judged ?? []).map((j) => [j.decision.id, j.holding] as const)),
  );
  return [
    { kind: 'heading', text: `Decisions on record (${project.decisions.length})` },
    ...project.decisions.flatMap((d): PaperBlock[] => {
      const holding = holdings.get(d.id);
      return [
        {
          kind: 'matter',
          name: `${d.number}  ${KIND_WORDS[d.kind]} of ${d.decidedOn}`,
          state: holding ? HOLDING_WORDS[holding.state] : 'finding is gone',
        },
        {
          kind: 'fields',
          rows: [['Finding', numbers.get(d.finding) ?? `gone; rule ${d.rule}`], ...recordRows(d)],
        },
      ];
    }),
  ];
}

function recordRows(d: Decision): [string, string][] {
  const rows: (readonly [string, string | undefined])[] = [
    ['Requirement', d.requirement],
    ['Actual', d.measured],
    ['Limit', d.limit],
    ['Items', d.items],
    ['Reason', d.reason],
    ['Risk', d.risk],
    ['Mitigation', d.mitigation],
    ['Conditions', d.conditions],
    ['Requested by', d.requester],
    ...d.approvals.map((a) => ['Approved by', `${a.name}, ${a.role}, ${a.date}`] as const),
    ['Holds', boundText(d)],
    ...(d.uses ?? []).map(
      (u) =>
        [
          'Used',
          `${u.quantity} on ${u.date}${u.items ? `, ${u.items}` : ''}, recorded by ${u.recordedBy}`,
        ] as const,
    ),
    ['Closed', d.closed && `${d.closed.date} by ${d.closed.by}: ${d.closed.reason}`],
  ];
  return rows.flatMap(([label, value]): [string, string][] => (value ? [[label, value]] : []));
}

function limitBlocks(project: Project): PaperBlock[] {
  const { name, revision, limits, tables } = project.limitSet;
  return [
    { kind: 'heading', text: `Limits used: ${name}, revision ${revision}` },
    {
      kind: 'table',
      columns: [
        { title: 'Limit', share: 3 },
        { title: 'Value', share: 2, align: 'right' },
        { title: 'Source', share: 5 },
      ],
      rows: [
        ...limits.map((l) => [l.id.replaceAll('-', ' '), amountText(l.value, l.unit), limitSource(l)]),
        ...(tables ?? []).map((t) => [t.id.replaceAll('-', ' '), t.table, 'table chosen in this project']),
      ],
    },
  ];
}
