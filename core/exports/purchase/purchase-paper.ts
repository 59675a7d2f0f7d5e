import { baselineOf } from '../../model/baseline';
import { cautionsOf } from '../cautions';
import type { DocumentInput } from '../exporter';
import type { Paper } from '../paper/paper';
import { A4_LANDSCAPE } from '../paper/sheet';
import type { Cell, Table } from '../table';

/** What stands in the cautions and the title block of every page already. */
const ELSEWHERE = new Set([
  'Caution', 'Document', 'Title', 'Supplementary title', 'Identification number', 'Revision', 'Legal owner', 'Creator',
  'Approved by', 'Date of issue',
]); // prettier-ignore

interface PaperColumn {
  readonly title: string;
  readonly share: number;
  readonly keys: readonly string[];
  readonly align?: 'right';
  /** Money: two digits, so that the points stand below each other. */
  readonly money?: true;
}

const COLUMNS: readonly PaperColumn[] = [
  { title: 'Item', share: 5, keys: ['item'], align: 'right' },
  { title: 'Part number', share: 14, keys: ['partNumber', 'colour'] },
  { title: 'Maker, description', share: 29, keys: ['maker', 'description'] },
  { title: 'Form', share: 5, keys: ['form'] },
  { title: 'Per harness', share: 9, keys: ['perHarness', 'unit'], align: 'right' },
  { title: 'Order', share: 9, keys: ['orderQuantity', 'unit'], align: 'right' },
  { title: 'Left over', share: 8, keys: ['leftOver'], align: 'right' },
  { title: 'Price of one', share: 9, keys: ['unitPrice'], align: 'right' },
  { title: 'Cost', share: 11, keys: ['lineCost', 'currency'], align: 'right', money: true },
  { title: 'Days', share: 5, keys: ['leadTimeDays'], align: 'right' },
  { title: 'Supplier, order code', share: 19, keys: ['supplier', 'orderCode'] },
]; // prettier-ignore

/** The purchase list as pages: what it comes to, the lines, and what is to be said of single lines. */
export function purchasePaper(table: Table, { harness: { project }, date }: DocumentInput): Paper {
  const revision = project.revisions.at(-1);
  const remarks = table.rows.flatMap((row) => {
    const said = [row['formReason'] ?? null, row['alternates'] ?? null, row['remarks'] ?? null].filter((c) => c !== null);
    return said.length > 0 ? [[`Item ${row['item']}, ${row['partNumber'] ?? 'no part'}`, said.join('; ')] as [string, string]] : [];
  }); // prettier-ignore
  return {
    id: table.id,
    title: table.title,
    titleBlock: project.titleBlock,
    revision: revision ? `${revision.revision} (${revision.status})` : 'not given',
    baseline: baselineOf(project),
    date,
    sheet: A4_LANDSCAPE,
    cautions: [...cautionsOf(project)],
    blocks: [
      { kind: 'heading', text: 'Order' },
      { kind: 'fields', rows: table.head.filter(([label]) => !ELSEWHERE.has(label)) },
      { kind: 'heading', text: `Lines (${table.rows.length})` },
      {
        kind: 'table',
        columns: COLUMNS.map(({ title, share, align }) => ({ title, share, ...(align ? { align } : {}) })),
        rows: table.rows.map((row) => COLUMNS.map((c) => cellText(c, row))),
      },
      ...(remarks.length > 0
        ? [
            { kind: 'heading' as const, text: 'To single lines' },
            { kind: 'fields' as const, rows: remarks },
          ]
        : []),
    ],
  };
}

/** Several cells of a row in one of the page; what is not known is said to be so, but for parts that come in no form. */
function cellText({ keys, money, title }: PaperColumn, row: Readonly<Record<string, Cell>>): string {
  const [first = null, ...rest] = keys.map((k) => row[k] ?? null);
  if (first === null) return title === 'Form' ? '' : 'not known';
  const shown = money && typeof first === 'number' ? first.toFixed(2) : first;
  return [shown, ...rest.filter((c) => c !== null)].join(' ');
}
