import type { DocumentInput, Exporter } from './exporter';
import { PLAN_COLUMNS, planRows, type PlanKey } from './inspection-plan/plan-rows';
import { AQL_BY_CLASS, INSPECTION_LEVEL } from './inspection-plan/sampling-cells';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper, PaperBlock } from './paper/paper';
import { paperTable } from './paper/paper-table';
import { A4_LANDSCAPE } from './paper/sheet';
import type { RowOf, Table } from './table';

/** What is inspected, against which limits, how and how many of a lot. */
export const inspectionPlan: Exporter = {
  id: 'inspection-plan',
  title: 'Inspection plan',
  summary: 'Every characteristic with its limits, class, method and sampling plan for the lot.',
  asks: ['quantity'],
  table: (input) => planTable(input),
  paper: (input) => planPaper(input),
};

const rowsOf = ({ harness, options }: DocumentInput): readonly RowOf<PlanKey>[] =>
  planRows(harness, options?.quantity ?? 1);

function planTable(input: DocumentInput): Table {
  const rows = rowsOf(input);
  return {
    id: inspectionPlan.id,
    title: inspectionPlan.title,
    head: benchHead(input.harness.project, inspectionPlan.title, summaryOf(input, rows)),
    columns: [...PLAN_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

function summaryOf(input: DocumentInput, rows: readonly RowOf<PlanKey>[]): [string, string][] {
  const open = rows.filter((r) => r.cells.remarks !== null).length;
  return [
    ['Characteristics', String(rows.length)],
    ['Harnesses of the lot', String(input.options?.quantity ?? 1)],
    ['Cannot be verified', open === 0 ? 'none' : `${open}: a requirement is not stated`],
    [
      'Sampling',
      `ISO 2859-1:1999, single sampling, normal inspection, level ${INSPECTION_LEVEL}; AQL ${AQL_BY_CLASS.major} major, ${AQL_BY_CLASS.minor} minor (common practice: agree them for the order); critical: every item`,
    ],
    [
      'A lot that is rejected',
      'is inspected whole, and what does not conform is set apart; no use without a decision on record',
    ],
  ];
}

function planPaper(input: DocumentInput): Paper {
  const rows = rowsOf(input);
  const kinds = [...new Set(rows.map((r) => String(r.cells.characteristic)))];
  const blocks = kinds.flatMap((kind): PaperBlock[] => {
    const here = rows.filter((r) => r.cells.characteristic === kind);
    const [first] = here;
    return [
      { kind: 'matter', name: kind, state: first ? String(first.cells.class) : '' },
      {
        kind: 'fields',
        rows: [
          ['Method', [...new Set(here.map((r) => String(r.cells.method)))].join('; ')],
          ['Source', [...new Set(here.map((r) => String(r.cells.source)))].join('; ')],
          ['Record, when', `${String(first?.cells.record ?? '')}; ${String(first?.cells.frequency ?? '')}`],
        ],
      },
      paperTable(COLUMNS, here),
    ];
  });
  return benchPaper(inspectionPlan, input, summaryOf(input, rows), blocks, A4_LANDSCAPE);
}

type Row = RowOf<PlanKey>;
const COLUMNS = [
  { title: 'No.', share: 0.8, align: 'right' as const, of: (r: Row) => r.cells.number },
  { title: 'At', share: 4, of: (r: Row) => r.cells.at },
  { title: 'Requirement', share: 6, of: (r: Row) => r.cells.requirement },
  { title: 'Lot', share: 1, align: 'right' as const, of: (r: Row) => r.cells.lot },
  { title: 'Inspect', share: 2.6, of: (r: Row) => r.cells.inspect },
  { title: 'n', share: 0.8, align: 'right' as const, of: (r: Row) => r.cells.sampleSize },
  { title: 'Ac', share: 0.7, align: 'right' as const, of: (r: Row) => r.cells.accept },
  { title: 'Re', share: 0.7, align: 'right' as const, of: (r: Row) => r.cells.reject },
  { title: 'Remarks', share: 4, of: (r: Row) => r.cells.remarks ?? '' },
];
