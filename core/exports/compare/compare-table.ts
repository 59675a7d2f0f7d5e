import { baselineOf } from '../../model/baseline';
import type { Project } from '../../model/project';
import { documentHead } from '../document-head';
import { harnessesText } from '../purchase/order-head';
import type { Column, Table } from '../table';
import { areaSummary, type Comparison } from './compare-projects';

const COLUMNS = [
  { key: 'area', title: 'Area' },
  { key: 'change', title: 'Change' },
  { key: 'subject', title: 'What' },
  { key: 'field', title: 'Of it' },
  { key: 'before', title: 'Before' },
  { key: 'after', title: 'After' },
] as const satisfies readonly Column[];

/** "B (draft), baseline 12ab34…": a state of a project as it is told apart. */
export const stateText = (project: Project): string => {
  const current = project.revisions.at(-1);
  const revision = current ? `${current.revision} (${current.status})` : 'not given';
  return `${revision}, baseline ${baselineOf(project)}`;
};

/** A comparison as rows; objects are those of the later state. */
export function compareTable(comparison: Comparison): Table {
  const { before, after, quantity, rows } = comparison;
  return {
    id: 'change-report',
    title: 'Change report',
    head: documentHead(after.harness.project, 'Change report', [
      ['From', stateText(before.harness.project)],
      ['To', stateText(after.harness.project)],
      ['Judged on', after.date],
      ['Order', harnessesText(quantity)],
      ...areaSummary(comparison),
    ]),
    columns: [...COLUMNS],
    rows: rows.map(({ area, what, subject, field, before: b, after: a }) => ({
      area,
      change: what,
      subject,
      field: field || null,
      before: b || null,
      after: a || null,
    })),
    objects: rows.map((r) => [...r.objects]),
  };
}
