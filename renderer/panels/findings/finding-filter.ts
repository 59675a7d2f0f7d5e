import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Project } from '@latchwork/core/model/project';
import { SEVERITIES, type Finding } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { sentenceOf } from '../rule-meta';

export interface FindingFilter {
  readonly severity: string;
  readonly result: string;
  readonly rule: string;
  readonly text: string;
}

export const ALL_FINDINGS: FindingFilter = { severity: '', result: '', rule: '', text: '' };

/** A finding with the words that the list shows. */
export interface FindingLine {
  readonly finding: Finding;
  readonly where: string;
  readonly sentence: string;
}

export type FindingRow = FindingLine | { readonly heading: string; readonly count: number };

/** Lines that the filter leaves, gravest first, with a heading before each severity. */
export function findingRows(
  project: Project,
  findings: readonly Finding[],
  filter: FindingFilter,
): readonly FindingRow[] {
  const wanted = filter.text.trim().toLowerCase();
  const lines = findings
    .filter(
      (f) =>
        (filter.severity === '' || f.severity === filter.severity) &&
        (filter.result === '' || f.result === filter.result) &&
        (filter.rule === '' || f.rule === filter.rule),
    )
    .map((finding): FindingLine => ({
      finding,
      where: finding.objects.map((o) => refText(project, o)).join(', '),
      sentence: sentenceOf(finding),
    }))
    .filter(
      (l) => wanted === '' || `${l.where} ${l.sentence} ${l.finding.rule}`.toLowerCase().includes(wanted),
    );
  return SEVERITIES.flatMap((severity): FindingRow[] => {
    const of = lines.filter((l) => l.finding.severity === severity);
    // What is known to be wrong comes before what is not known.
    of.sort(
      (a, b) =>
        Number(a.finding.result === 'cannot-verify') - Number(b.finding.result === 'cannot-verify') ||
        compareNatural(a.where, b.where) ||
        compareNatural(a.finding.rule, b.finding.rule),
    );
    return of.length ? [{ heading: severity, count: of.length }, ...of] : [];
  });
}
