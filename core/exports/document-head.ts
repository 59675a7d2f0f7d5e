import type { Project } from '../model/project';
import { cautionsOf } from './cautions';
import type { Table } from './table';

/** Title block (fields of ISO 7200), limit set and cautions: the same above every document of a project. */
export function documentHead(
  project: Project,
  documentTitle: string,
  more: readonly (readonly [string, string])[] = [],
): Table['head'] {
  const t = project.titleBlock;
  const revision = project.revisions.at(-1);
  const lines: (readonly [string, string | undefined])[] = [
    ['Document', documentTitle],
    ['Title', t.title],
    ['Supplementary title', t.supplementaryTitle],
    ['Identification number', t.identificationNumber || 'not given'],
    ['Revision', revision ? `${revision.revision} (${revision.status})` : 'not given'],
    ['Legal owner', t.legalOwner],
    ['Creator', t.creator],
    ['Approved by', t.approvalPerson],
    ['Date of issue', t.dateOfIssue],
    ['Limit set', `${project.limitSet.name}, revision ${project.limitSet.revision}`],
    ...more,
    ...cautionsOf(project).map((text) => ['Caution', text] as const),
  ];
  return lines.flatMap(([label, value]): Table['head'] => (value ? [[label, value]] : []));
}

/**
 * A document with the baseline hash in its head, for those that leave the program. Not part of the document itself: the
 * hash takes a pass over the whole project, which a view need not wait for.
 */
export const withBaseline = (table: Table, baseline: string): Table => ({
  ...table,
  head: [...table.head, ['Baseline (SHA-256)', baseline]],
});
