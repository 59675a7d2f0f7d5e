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

/** Lines that the filter leaves: faults, gravest first, then what is still open; a heading before each group. */
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
        (filter.result === '' || (filter.result === 'open' ? f.open : f.result === filter.result)) &&
        (filter.rule === '' || f.rule === filter.rule),
    )
    .map((finding): FindingLine => ({
      finding,
      where: [...new Set(finding.objects.map((o) => refText(project, o)))].join(', '),
      sentence: sentenceOf(finding),
    }))
    .filter(
      (l) => wanted === '' || `${l.where} ${l.sentence} ${l.finding.rule}`.toLowerCase().includes(wanted),
    );
  const groups = [
    ...SEVERITIES.map((heading) => ({
      heading: heading as string,
      of: lines.filter((l) => !l.finding.open && l.finding.severity === heading),
    })),
    { heading: 'open points', of: lines.filter((l) => l.finding.open) },
  ];
  return groups.flatMap(({ heading, of }): FindingRow[] => {
    // What is known to be wrong comes before what is not known.
    of.sort(
      (a, b) =>
        Number(a.finding.result === 'cannot-verify') - Number(b.finding.result === 'cannot-verify') ||
        compareNatural(a.where, b.where) ||
        compareNatural(a.finding.rule, b.finding.rule),
    );
    return of.length ? [{ heading, count: of.length }, ...of] : [];
  });
}
