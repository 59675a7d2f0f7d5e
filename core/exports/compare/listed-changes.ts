import { compareFindings } from '../../decisions/compare-findings';
import type { Project } from '../../model/project';
import type { Finding } from '../../rules/finding';
import { RULES } from '../../rules/index';
import { refText } from '../../rules/refs';
import type { DocumentInput } from '../exporter';
import { messageOf, RESULT_WORDS } from '../findings/finding-words';
import { deltaTable } from '../purchase/delta';
import type { Cell } from '../table';
import type { ChangeRow } from './change-row';

/** Lines of the parts list whose quantity differs, with what that means for an order of so many harnesses. */
export function partsListChanges(
  before: DocumentInput,
  after: DocumentInput,
  harnesses: number,
): readonly ChangeRow[] {
  const { rows, objects } = deltaTable(before.harness, after.harness, harnesses);
  return rows.map((row, i): ChangeRow => {
    const said = (key: string): string => words(row[key] ?? null);
    const part = [said('partNumber'), row['colour'] === null ? '' : said('colour')].filter(Boolean).join(' ');
    return {
      area: 'Parts list',
      what: row['change'] as ChangeRow['what'],
      subject: `${said('kind')} ${row['partNumber'] === null ? 'without a part' : part}`,
      field: `per harness, ${said('unit')}; ${said('effect')}`,
      before: said('perHarnessBefore'),
      after: said('perHarnessAfter'),
      objects: objects[i] ?? [],
      gone: [],
    };
  });
}

const words = (cell: Cell): string => (cell === null ? 'not known' : String(cell));

/** Findings that went, came, or say something else now. */
export function findingChanges(before: DocumentInput, after: DocumentInput): readonly ChangeRow[] {
  const [was, is] = [before, after].map(({ harness, check }) => ({
    project: harness.project,
    findings: check.findings,
  })) as [Checked, Checked];
  const { gone, added, changed } = compareFindings(was, is);
  const row = (what: ChangeRow['what'], one: Checked, finding: Finding): Omit<ChangeRow, 'before' | 'after'> => {
    const refs = finding.objects.filter((o) => o.type !== 'project');
    return {
      area: 'Findings',
      what,
      subject: finding.objects.map((o) => refText(one.project, o)).join(', ') || 'project',
      field: `${finding.rule}, ${finding.severity}, ${RESULT_WORDS[finding.result]}`,
      objects: what === 'removed' ? [] : refs,
      gone: [],
    };
  };
  return [
    ...gone.map((f): ChangeRow => ({ ...row('removed', was, f), before: text(f), after: '' })),
    ...added.map((f): ChangeRow => ({ ...row('added', is, f), before: '', after: text(f) })),
    ...changed.map((c): ChangeRow => ({ ...row('changed', is, c.after), before: text(c.before), after: text(c.after) })),
  ];
} // prettier-ignore

interface Checked {
  readonly project: Project;
  readonly findings: readonly Finding[];
}

const text = (finding: Finding): string =>
  messageOf(finding, RULES.find((r) => r.meta.id === finding.rule)?.meta);
