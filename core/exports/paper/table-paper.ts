import { baselineOf } from '../../model/baseline';
import { cautionsOf } from '../cautions';
import type { DocumentInput } from '../exporter';
import type { Cell, Table } from '../table';
import type { Paper, PaperBlock } from './paper';
import { A4_LANDSCAPE } from './sheet';

/** What stands in the cautions and the title block of every page already. */
const ELSEWHERE = new Set([
  'Caution', 'Document', 'Title', 'Supplementary title', 'Identification number', 'Revision', 'Legal owner', 'Creator',
  'Approved by', 'Date of issue',
]); // prettier-ignore

/** A column of a page, made from one or more columns of the table. */
export interface PaperColumn {
  readonly title: string;
  readonly share: number;
  readonly keys: readonly string[];
  readonly align?: 'right';
  /** Money: two digits, so that the points stand below each other. */
  readonly money?: true;
  /** What stands where there is nothing; "not known" unless said. */
  readonly blank?: string;
}

/** A table as pages on its side: its head, its rows with the columns that fit a page, and what comes after. */
export function tablePaper(
  table: Table,
  { harness: { project }, date }: DocumentInput,
  columns: readonly PaperColumn[],
  after: readonly PaperBlock[] = [],
): Paper {
  const revision = project.revisions.at(-1);
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
      { kind: 'heading', text: table.title },
      { kind: 'fields', rows: table.head.filter(([label]) => !ELSEWHERE.has(label)) },
      { kind: 'heading', text: `Lines (${table.rows.length})` },
      {
        kind: 'table',
        columns: columns.map(({ title, share, align }) => ({ title, share, ...(align ? { align } : {}) })),
        rows: table.rows.map((row) => columns.map((c) => cellText(c, row))),
      },
      ...after,
    ],
  };
}

function cellText(
  { keys, money, blank = 'not known' }: PaperColumn,
  row: Readonly<Record<string, Cell>>,
): string {
  const [first = null, ...rest] = keys.map((k) => row[k] ?? null);
  if (first === null) return blank;
  const shown = money && typeof first === 'number' ? first.toFixed(2) : first;
  return [shown, ...rest.filter((c) => c !== null)].join(' ');
}
