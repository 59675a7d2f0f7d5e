import type { DocumentInput, Exporter } from './exporter';
import { benchHead, benchPaper } from './paper/bench-paper';
import { formGrid, type GridColumn } from './paper/form-grid';
import type { Paper, PaperBlock } from './paper/paper';
import { cellText, plainText } from './paper/paper-table';
import { A4_LANDSCAPE } from './paper/sheet';
import { FORMS, RECORD_COLUMNS, recordRows, type RecordRow } from './record-sheets/record-rows';
import { HEIGHT_SAMPLES, PULL_SAMPLES } from './crimp-sheets/crimp-checks';
import type { Table } from './table';

/** Forms to fill in: first article, crimp heights, pull-out forces, with the limits printed. */
export const recordSheets: Exporter = {
  id: 'record-sheets',
  title: 'Record sheets',
  summary: 'Blank forms with the limits printed: first article, crimp heights, pull-out forces.',
  asks: ['quantity'],
  table: (input) => recordTable(input),
  paper: (input) => recordPaper(input),
};

function recordTable(input: DocumentInput): Table {
  const rows = recordRows(input);
  return {
    id: recordSheets.id,
    title: recordSheets.title,
    head: benchHead(input.harness.project, recordSheets.title, summaryOf(input)),
    columns: [...RECORD_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

const summaryOf = ({ options }: DocumentInput): [string, string][] => [
  ['Harnesses of the lot', String(options?.quantity ?? 1)],
  ['To be filled in', 'result, gauge, lot or serial number, verdict, nonconformity number, name and date'],
  ['Forms', `${Object.values(FORMS).join('; ')} (content after AS9102 and common practice)`],
];

const LANDSCAPE_MM = 255;
/** Rows of a form that fit on a page below its heading. */
const ROWS_PER_GRID = 16;
const ROW_MM = 6.2;

const RESULT: readonly GridColumn[] = [
  { title: 'Result', share: 2.4 },
  { title: 'Gauge', share: 1.6 },
  { title: 'Verdict', share: 1.3 },
  { title: 'Nonconf. no.', share: 1.5 },
  { title: 'Name, date', share: 2.4 },
];
const LINE: GridColumn = { title: 'Line', share: 0.8 };

interface Form {
  readonly columns: readonly GridColumn[];
  of(row: RecordRow): readonly string[];
}

const limits = ({ cells: c }: RecordRow): string =>
  c.min === null && c.max === null
    ? 'not stated'
    : c.min !== null && c.max !== null
      ? `${c.min} to ${c.max} ${cellText(c.unit)}`
      : c.min !== null
        ? `at least ${c.min} ${cellText(c.unit)}`
        : `at most ${c.max} ${cellText(c.unit)}`;

const readings = (what: string, n: number): GridColumn[] =>
  Array.from({ length: n }, (_, i) => ({ title: `${what} ${i + 1}`, share: 1.3 }));

const FORM_OF: Readonly<Record<string, Form>> = {
  [FORMS.parts]: {
    columns: [LINE, { title: 'Part', share: 7 }, { title: 'At', share: 4 }, { title: 'Quantity', share: 1.4 }, { title: 'Lot or serial', share: 2.4 }, { title: 'Certificate', share: 2 }, ...RESULT.slice(2)],
    of: ({ cells: c }) => [cellText(c.line), cellText(c.requirement), cellText(c.at), `${cellText(c.min)} ${cellText(c.unit)}`],
  },
  [FORMS.processes]: {
    columns: [LINE, { title: 'Process or test', share: 2 }, { title: 'At', share: 5 }, { title: 'Requirement', share: 6 }, ...RESULT],
    of: ({ cells: c }) => [cellText(c.line), cellText(c.characteristic), cellText(c.at), cellText(c.requirement)],
  },
  [FORMS.characteristics]: {
    columns: [LINE, { title: 'No., characteristic', share: 3 }, { title: 'At', share: 3.4 }, { title: 'Requirement', share: 6 }, ...RESULT],
    of: ({ cells: c }) => [cellText(c.line), cellText(c.characteristic), cellText(c.at), cellText(c.requirement)],
  },
  [FORMS.heights]: {
    columns: [LINE, { title: 'At', share: 5 }, { title: 'Limits', share: 2.6 }, ...readings('Height', HEIGHT_SAMPLES), { title: 'Width', share: 1.2 }, { title: 'Contact lot', share: 1.8 }, { title: 'Wire lot', share: 1.8 }, ...RESULT.slice(1, 3), { title: 'Name, date', share: 2 }],
    of: (row) => [cellText(row.cells.line), cellText(row.cells.at), limits(row)],
  },
  [FORMS.pulls]: {
    columns: [LINE, { title: 'At', share: 5 }, { title: 'Limits', share: 2.6 }, ...readings('Pull', PULL_SAMPLES), { title: 'Broke where', share: 2.4 }, { title: 'Contact lot', share: 1.8 }, { title: 'Wire lot', share: 1.8 }, ...RESULT.slice(1, 3), { title: 'Name, date', share: 2 }],
    of: (row) => [cellText(row.cells.line), cellText(row.cells.at), limits(row)],
  },
}; // prettier-ignore

function recordPaper(input: DocumentInput): Paper {
  const rows = recordRows(input);
  const blocks = Object.values(FORMS).flatMap((name, i): PaperBlock[] => {
    const form = FORM_OF[name];
    const here = rows.filter((r) => r.cells.form === name);
    if (!form || here.length === 0)
      return [{ kind: 'heading', text: name }, plainText('Nothing of the kind in this harness.')];
    const pages = Array.from({ length: Math.ceil(here.length / ROWS_PER_GRID) }, (_, p) =>
      here.slice(p * ROWS_PER_GRID, (p + 1) * ROWS_PER_GRID),
    );
    return pages.flatMap((page, p): PaperBlock[] => [
      ...(i === 0 && p === 0 ? [] : [{ kind: 'page-break' as const }]),
      { kind: 'heading', text: pages.length > 1 ? `${name} (${p + 1} of ${pages.length})` : name },
      plainText(LINES_TO_FILL),
      {
        kind: 'drawing',
        form: true,
        drawing: formGrid(form.columns, page.map((r) => form.of(r)), { rowMm: ROW_MM, widthMm: LANDSCAPE_MM }), // prettier-ignore
      },
    ]);
  });
  return benchPaper(recordSheets, input, summaryOf(input), blocks, A4_LANDSCAPE);
}

const LINES_TO_FILL =
  'Order: ....................   Serial or lot: ....................   Tool, die: ....................   Operator: ....................   Date: ....................';
