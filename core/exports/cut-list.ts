import { cutPlan, type CutPlan } from './cut-list/cut-plan';
import { CUT_COLUMNS, cutRow, type CutKey } from './cut-list/cut-rows';
import type { DocumentInput, Exporter } from './exporter';
import { METHOD_WORDS } from './labels/method-words';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper } from './paper/paper';
import { A4_LANDSCAPE } from './paper/sheet';
import { cellText, paperTable, plainText } from './paper/paper-table';
import type { RowOf, Table } from './table';

/** Every wire as it is cut, stripped and crimped, in the order that changes the machine least often. */
export const cutList: Exporter = {
  id: 'cut-list',
  title: 'Cut list',
  summary: 'Every wire with length, strips, contacts, seals and tools, in the order of the fewest set-ups.',
  asks: ['quantity'],
  table: (input) => cutTable(input),
  paper: (input) => cutPaper(input),
};

const orderOf = ({ options }: DocumentInput): number => options?.quantity ?? 1;

const rowsOf = (input: DocumentInput): readonly RowOf<CutKey>[] =>
  cutPlan(input.harness).lines.map((line, i) => cutRow(input.harness, line, i + 1, orderOf(input)));

function cutTable(input: DocumentInput): Table {
  const rows = rowsOf(input);
  return {
    id: cutList.id,
    title: cutList.title,
    head: benchHead(input.harness.project, cutList.title, summaryOf(input)),
    columns: [...CUT_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

function summaryOf(input: DocumentInput): [string, string][] {
  const plan = cutPlan(input.harness);
  return [
    ['Wires', `${input.harness.wires.length} in ${plan.lines.length} lines`],
    ['Harnesses of the order', String(orderOf(input))],
    ['Set-ups', setUpWords(plan)],
    [
      'Counted as a change',
      'the wire spool, and on each side the contact with its applicator, the strip length and the seal; ends may run either way round',
    ],
    ['Marking of wires', METHOD_WORDS[input.harness.project.labelMethod ?? 'none']],
    [
      'Length tolerance',
      'plus: IPC/WHMA-A-620 B (final draft, 2012), table 11-1; minus: limit set. A tolerance on the drawing wins.',
    ],
  ];
}

function setUpWords(plan: CutPlan): string {
  const saved = plan.byDesignator - plan.changes;
  const sure = plan.proven
    ? 'no order has fewer'
    : `the fewest that the search found; no order has fewer than ${plan.atLeast}`;
  return (
    `${plan.changes} changes in ${plan.setUps} set-ups (${sure}); ${plan.byDesignator} in the order of the wire numbers, ` +
    `${plan.bySortKey} sorted by part, colour, contacts and strip: ${saved} saved`
  );
}

function cutPaper(input: DocumentInput): Paper {
  const rows = rowsOf(input);
  return benchPaper(
    cutList,
    input,
    summaryOf(input),
    [
      plainText(
        'A and B are the sides of the machine, not the ends of the drawing. – : not known, or not needed.',
      ),
      paperTable(PAPER_COLUMNS, rows),
    ],
    A4_LANDSCAPE,
  );
}

type Row = RowOf<CutKey>;

const end = ({ cells: c }: Row, s: 'A' | 'B'): string =>
  [cellText(c[`end${s}`]), c[`label${s}`] === null ? undefined : `label ${cellText(c[`label${s}`])}`]
    .filter((t) => t !== undefined)
    .join('; ');
const strip = ({ cells: c }: Row, s: 'A' | 'B'): string =>
  c[`strip${s}Mm`] === null ? '–' : `${c[`strip${s}Mm`]} ±${cellText(c[`strip${s}ToleranceMm`])}`;
const fitted = ({ cells: c }: Row, s: 'A' | 'B'): string => {
  const parts = [c[`contact${s}`], c[`seal${s}`]].filter((t) => t !== null).join(' + ');
  return [parts || '–', c[`tool${s}`]].filter((t) => t !== null).join(', ');
};
const lengthText = ({ cells: c }: Row): string =>
  c.lengthMm === null ? '–' : `${c.lengthMm} +${cellText(c.plusMm)} -${cellText(c.minusMm)}`;

const side = (s: 'A' | 'B') => [
  { title: `End ${s}`, share: 2.4, of: (r: Row) => end(r, s) },
  { title: `Strip ${s}`, share: 1.9, of: (r: Row) => strip(r, s) },
  { title: `Contact + seal, tool ${s}`, share: 4.6, of: (r: Row) => fitted(r, s) },
];

const PAPER_COLUMNS = [
  { title: 'No.', share: 1.1, align: 'right' as const, of: (r: Row) => r.cells.sequence },
  {
    title: 'Change',
    share: 2.4,
    of: (r: Row) => (r.cells.sequence === 1 ? 'set up all' : (r.cells.change ?? '')),
  },
  { title: 'Wires', share: 2.2, of: (r: Row) => r.cells.wires },
  {
    title: 'Wire part, colour',
    share: 3.6,
    of: (r: Row) => `${cellText(r.cells.wirePart)} ${cellText(r.cells.colour)}`,
  },
  { title: 'Length (mm)', share: 2.6, align: 'right' as const, of: lengthText },
  { title: 'Order', share: 1.5, align: 'right' as const, of: (r: Row) => r.cells.orderQuantity },
  ...side('A'),
  ...side('B'),
  {
    title: 'Mark, group, remarks',
    share: 3.4,
    of: (r: Row) =>
      [r.cells.mark === null ? null : `mark ${r.cells.mark}`, r.cells.group, r.cells.cable, r.cells.remarks]
        .filter((t) => t !== null)
        .join('; '),
  },
];
