import { compareNatural } from '@latchwork/core/base/stable-order';
import { STANDINGS, type Standing } from '@latchwork/core/decisions/standing';
import type { Project } from '@latchwork/core/model/project';
import { SEVERITIES, type Finding, type ObjectRef } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { sentenceOf } from '../rule-meta';

export interface FindingFilter {
  readonly severity: string;
  readonly result: string;
  readonly rule: string;
  readonly standing: string;
  /** Designators. */
  readonly connector: string;
  readonly wire: string;
  readonly text: string;
}

export const ALL_FINDINGS: FindingFilter = {
  severity: '',
  result: '',
  rule: '',
  standing: '',
  connector: '',
  wire: '',
  text: '',
};

export const GROUPINGS = ['severity', 'rule', 'connector', 'wire', 'result', 'standing'] as const;
export type Grouping = (typeof GROUPINGS)[number];

/** A finding with the words that the list shows. */
export interface FindingLine {
  readonly finding: Finding;
  readonly where: string;
  readonly sentence: string;
  readonly standing: Standing;
}

export type FindingRow = FindingLine | { readonly heading: string; readonly count: number };

export interface AskedFindings {
  readonly project: Project;
  readonly findings: readonly Finding[];
  readonly standings: ReadonlyMap<string, Standing>;
}

const OPEN: Standing = { state: 'open', by: undefined, judged: [] };

/**
 * Lines that the filter leaves, in groups with a heading each. Grouped by severity: faults, gravest first, then points
 * that are still open, then what is accepted on record.
 */
export function findingRows(
  { project, findings, standings }: AskedFindings,
  filter: FindingFilter,
  grouping: Grouping = 'severity',
): readonly FindingRow[] {
  const wanted = filter.text.trim().toLowerCase();
  const lines = findings
    .map((finding): FindingLine => ({
      finding,
      where: [...new Set(finding.objects.map((o) => refText(project, o)))].join(', '),
      sentence: sentenceOf(finding),
      standing: standings.get(finding.key) ?? OPEN,
    }))
    .filter((l) => isWanted(project, l, filter))
    .filter(
      (l) => wanted === '' || `${l.where} ${l.sentence} ${l.finding.rule}`.toLowerCase().includes(wanted),
    );
  const groups = new Map<string, FindingLine[]>();
  for (const line of lines) {
    const heading = headingOf(project, line, grouping);
    groups.set(heading, [...(groups.get(heading) ?? []), line]);
  }
  return [...groups]
    .sort(([a], [b]) => rankOf(a) - rankOf(b) || compareNatural(a, b))
    .flatMap(([heading, of]): FindingRow[] => {
      of.sort(compareLines);
      return [{ heading, count: of.length }, ...of];
    });
}

function isWanted(project: Project, { finding: f, standing }: FindingLine, filter: FindingFilter): boolean {
  const { severity, result, rule, connector, wire } = filter;
  return (
    (severity === '' || f.severity === severity) &&
    (result === '' || (result === 'open' ? f.open : f.result === result)) &&
    (rule === '' || f.rule === rule) &&
    (filter.standing === '' || standing.state === filter.standing) &&
    (connector === '' || connectorsOf(project, f).includes(connector)) &&
    (wire === '' || wiresOf(project, f).includes(wire))
  );
}

const OPEN_POINTS = 'open points';
const ON_RECORD = 'accepted on record';
const NO_CONNECTOR = 'no connector';
const NO_WIRE = 'no wire';

/** Headings in the order of the list; what is not in it follows by name, and what has no place comes last. */
const RANKS: readonly string[] = [
  ...SEVERITIES,
  OPEN_POINTS,
  ON_RECORD,
  'fails',
  'cannot verify',
  ...STANDINGS,
];

function rankOf(heading: string): number {
  if (heading === NO_CONNECTOR || heading === NO_WIRE) return RANKS.length + 1;
  const at = RANKS.indexOf(heading);
  return at < 0 ? RANKS.length : at;
}

function headingOf(project: Project, { finding: f, standing }: FindingLine, grouping: Grouping): string {
  switch (grouping) {
    case 'severity':
      if (standing.state === 'accepted') return ON_RECORD;
      return f.open ? OPEN_POINTS : f.severity;
    case 'rule':
      return f.rule;
    case 'result':
      return f.result === 'fail' ? 'fails' : 'cannot verify';
    case 'standing':
      return standing.state;
    case 'connector':
      return connectorsOf(project, f)[0] ?? NO_CONNECTOR;
    case 'wire':
      return wiresOf(project, f)[0] ?? NO_WIRE;
  }
}

/** What is known to be wrong comes before what is not known. */
const compareLines = (a: FindingLine, b: FindingLine): number =>
  SEVERITIES.indexOf(a.finding.severity) - SEVERITIES.indexOf(b.finding.severity) ||
  Number(a.finding.result === 'cannot-verify') - Number(b.finding.result === 'cannot-verify') ||
  compareNatural(a.where, b.where) ||
  compareNatural(a.finding.rule, b.finding.rule);

/** Designators of the connectors that take part in a finding, also by a cavity. */
export const connectorsOf = (project: Project, finding: Finding): readonly string[] =>
  names(
    project,
    finding.objects.flatMap((o) =>
      o.type === 'connector' || o.type === 'cavity' ? [{ type: 'connector' as const, id: o.id }] : [],
    ),
  );

export const wiresOf = (project: Project, finding: Finding): readonly string[] =>
  names(
    project,
    finding.objects.filter((o) => o.type === 'wire'),
  );

const names = (project: Project, refs: readonly ObjectRef[]): readonly string[] => [
  ...new Set(refs.map((o) => refText(project, o))),
];
