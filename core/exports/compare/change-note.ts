import { baselineOf } from '../../model/baseline';
import { cautionsOf, SHOP_CAUTIONS } from '../cautions';
import { formGrid } from '../paper/form-grid';
import type { Paper, PaperBlock } from '../paper/paper';
import { namedText, paperTable, plainText } from '../paper/paper-table';
import type { ChangeRow } from './change-row';
import { areaSummary, type Comparison } from './compare-projects';
import { stateText } from './compare-table';
import { documentChangeText } from './document-changes';
import { firstArticleChecks } from './first-article';

/**
 * A change note: why, which documents, from when, what happens to stock and to harnesses in work, what of the first article
 * is repeated, who approves. What can be computed is printed, the rest are boxes for people to fill in.
 */
export function changeNote(comparison: Comparison): Paper {
  const { before, after } = comparison;
  const { project } = after.harness;
  const revision = project.revisions.at(-1);
  return {
    id: 'change-note',
    title: 'Change note',
    titleBlock: project.titleBlock,
    revision: revision ? `${revision.revision} (${revision.status})` : 'not given',
    baseline: baselineOf(project),
    date: after.date,
    cautions: [...cautionsOf(project), ...SHOP_CAUTIONS],
    blocks: [
      {
        kind: 'fields',
        rows: [
          ['From', stateText(before.harness.project)],
          ['To', stateText(project)],
          ['Limit set', `${project.limitSet.name}, revision ${project.limitSet.revision}`],
        ],
      },
      { kind: 'heading', text: 'Reason' },
      ...reasons(comparison),
      { kind: 'heading', text: 'Documents touched' },
      ...documents(comparison),
      { kind: 'heading', text: 'Changes in short' },
      { kind: 'fields', rows: areaSummary(comparison).map(([a, b]): [string, string] => [a, b]) },
      ...changes(comparison.rows),
      { kind: 'heading', text: 'Effectivity' },
      form(
        [['Valid from', 3], ['Order, lot or serial number', 5], ['Older state may be built until', 5], ['Decided by', 4]],
        [[], []],
      ),
      { kind: 'heading', text: 'Stock and work in progress' },
      ...stock(comparison),
      { kind: 'heading', text: 'First article to be repeated for' },
      ...article(comparison),
      { kind: 'heading', text: 'Approvals' },
      form(
        [['Role', 3], ['Name', 5], ['Date', 3], ['Signature', 6]],
        ['Design', 'Quality', 'Purchasing', 'Harness shop', 'Customer, where agreed'].map((role) => [role]),
      ),
    ],
  };
} // prettier-ignore

const form = (columns: readonly (readonly [string, number])[], rows: readonly (readonly string[])[]): PaperBlock => ({
  kind: 'drawing',
  form: true,
  drawing: formGrid(columns.map(([title, share]) => ({ title, share })), rows, { rowMm: 8 }),
}); // prettier-ignore

function reasons({ before, after }: Comparison): PaperBlock[] {
  const known = new Set(before.harness.project.revisions.map((r) => r.id));
  const since = after.harness.project.revisions.filter((r) => !known.has(r.id));
  return since.length > 0
    ? since.map((r) => namedText(`Revision ${r.revision}`, r.description || 'no reason stated'))
    : [plainText('No revision was begun since; state the reason:'), form([['Reason', 1]], [[], []])];
}

const documents = ({ documents: touched }: Comparison): PaperBlock[] =>
  touched.length === 0
    ? [plainText('None in its content.')]
    : [
        paperTable(
          [
            { title: 'Document', share: 4, of: (d: (typeof touched)[number]) => d.exporter.title },
            { title: 'What of it', share: 8, of: (d) => documentChangeText(d) },
          ],
          touched,
        ),
        plainText(
          'Every paper of the new revision bears its own baseline. Withdraw those of the older one, also where their content is the same.',
        ),
      ];

/** Documents and the parts list stand in places of their own. */
const changes = (rows: readonly ChangeRow[]): PaperBlock[] => {
  const told = rows.filter((r) => r.area !== 'Documents' && r.area !== 'Parts list');
  return told.length === 0
    ? []
    : [
        { kind: 'heading', text: `Changes (${told.length})` },
        paperTable(
          [
            { title: 'Area', share: 2.2, of: (r: ChangeRow) => r.area },
            { title: 'Change', share: 1.6, of: (r) => r.what },
            { title: 'What', share: 3.4, of: (r) => r.subject },
            { title: 'Of it', share: 3, of: (r) => r.field },
            { title: 'Before', share: 3.6, of: (r) => r.before },
            { title: 'After', share: 3.6, of: (r) => r.after },
          ],
          told,
        ),
      ];
};

function stock({ rows, quantity }: Comparison): PaperBlock[] {
  const lines = rows.filter((r) => r.area === 'Parts list');
  return [
    ...(lines.length === 0
      ? [plainText('The parts list is the same: parts in stock and orders placed stay good.')]
      : [
          plainText(`For an order of ${quantity}; what an order placed means is computed, what is done with it is to be decided.`),
          paperTable(
            [
              { title: 'Change', share: 2, of: (r: ChangeRow) => r.what },
              { title: 'Part', share: 5, of: (r) => r.subject },
              { title: 'Before', share: 1.6, align: 'right', of: (r) => r.before },
              { title: 'After', share: 1.6, align: 'right', of: (r) => r.after },
              { title: 'Effect on the order', share: 6, of: (r) => r.field },
            ],
            lines,
          ),
        ]),
    form(
      [['What there is', 4], ['Quantity', 2], ['Use as it is', 2], ['Rework', 2], ['Return', 2], ['Scrap', 2], ['Decided by', 3]],
      ['Harnesses finished', 'Harnesses in work', 'Wires cut, leads crimped', 'Parts in stock', 'Parts on order'].map((what) => [what]),
    ),
  ];
} // prettier-ignore

function article(comparison: Comparison): PaperBlock[] {
  const checks = firstArticleChecks(comparison);
  if (checks.length === 0)
    return [
      plainText('Nothing that the changes suggest. Whether a first article is needed is for quality to say.'),
      form([['Characteristic', 6], ['Needed', 2], ['Result', 3], ['By, date', 3]], [[], []]),
    ];
  return [
    plainText('Suggested from the changes; complete it. What is not listed was not looked at by a person.'),
    ...pieces(checks, 18).map((page) =>
      form(
        [['Object', 3], ['Characteristic', 8], ['Because', 3], ['Needed', 1.6], ['Result', 2.4], ['By, date', 2.6]],
        page.map((c) => [c.subject, c.check, c.because]),
      ),
    ),
  ];
} // prettier-ignore

function pieces<T>(all: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, i) => all.slice(i * size, (i + 1) * size));
}
