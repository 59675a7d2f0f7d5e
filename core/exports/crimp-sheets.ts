import type { Harness } from '../derive/harness';
import {
  CHECK_FREQUENCY,
  FREQUENCY_SOURCE,
  STRAND_SOURCE,
  VISUAL_CRITERIA,
} from './crimp-sheets/crimp-checks';
import { crimpForm } from './crimp-sheets/crimp-form';
import { crimpGroups } from './crimp-sheets/crimp-groups';
import { CRIMP_COLUMNS, crimpRow, type CrimpKey } from './crimp-sheets/crimp-rows';
import type { DocumentInput, Exporter } from './exporter';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper, PaperBlock } from './paper/paper';
import { cellText, paperTable } from './paper/paper-table';
import { A4_UPRIGHT } from './paper/sheet';
import type { RowOf, Table } from './table';

/** One sheet for each contact with its wires and tool: what the crimp must be, how it is checked, boxes for what was measured. */
export const crimpSheets: Exporter = {
  id: 'crimp-sheets',
  title: 'Crimp sheets',
  summary:
    'For each contact, wire and tool the heights, pull-out force and strip length, with room for what was measured.',
  asks: ['quantity'],
  table: (input) => crimpTable(input),
  paper: (input) => crimpPaper(input),
};

const rowsOf = ({ harness, options }: DocumentInput): readonly RowOf<CrimpKey>[] =>
  crimpGroups(harness).map((g, i) => crimpRow(harness, g, i + 1, options?.quantity ?? 1));

function crimpTable(input: DocumentInput): Table {
  const rows = rowsOf(input);
  return {
    id: crimpSheets.id,
    title: crimpSheets.title,
    head: benchHead(input.harness.project, crimpSheets.title, summaryOf(input, rows)),
    columns: [...CRIMP_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

function summaryOf(input: DocumentInput, rows: readonly RowOf<CrimpKey>[]): [string, string][] {
  const crimps = rows.reduce((sum, r) => sum + Number(r.cells.quantity), 0);
  const open = rows.filter((r) => r.cells.heightMm === null || r.cells.pullMinN === null).length;
  return [
    ['Sheets', `${rows.length} for ${crimps} crimps`],
    ['Harnesses of the order', String(input.options?.quantity ?? 1)],
    ['Ends without a contact', endsWithoutContact(input.harness)],
    [
      'Without height or pull-out force',
      open === 0 ? 'none' : `${open} of the sheets: cannot be verified until they are stated`,
    ],
    ['Checked', CHECK_FREQUENCY],
    ['Source of the frequency', FREQUENCY_SOURCE],
  ];
}

function endsWithoutContact({ wires }: Harness): string {
  const ends = wires.flatMap((w) =>
    [w.from, w.to].flatMap((e) =>
      e.end.at === 'cavity' && !e.contactPart && e.connector?.part?.kind === 'housing'
        ? [`${e.connector.connector.designator}:${e.end.cavity}`]
        : [],
    ),
  );
  return ends.length === 0 ? 'none' : ends.join(', ');
}

function crimpPaper(input: DocumentInput): Paper {
  const rows = rowsOf(input);
  return benchPaper(
    crimpSheets,
    input,
    summaryOf(input, rows),
    [
      { kind: 'heading', text: 'Visual criteria for every sheet' },
      paperTable(
        [
          { title: 'Look for', share: 7, of: (v) => v.what },
          { title: 'Source', share: 3, of: (v) => v.source },
        ],
        VISUAL_CRITERIA,
      ),
      { kind: 'heading', text: 'Tools and applicators' },
      toolTable(rows),
      ...rows.flatMap((r): PaperBlock[] => [{ kind: 'page-break' }, ...sheetBlocks(r)]),
    ],
    A4_UPRIGHT,
  );
}

function toolTable(rows: readonly RowOf<CrimpKey>[]): PaperBlock {
  const sheets = new Map<string, { tool: string; die: string; sheets: string[]; parts: Set<string> }>();
  for (const { cells: c } of rows) {
    const [tool, die] = [c.tool === null ? 'not stated' : String(c.tool), cellText(c.die)];
    const entry = sheets.get(`${tool} ${die}`) ?? { tool, die, sheets: [], parts: new Set<string>() };
    entry.sheets.push(String(c.sheet));
    entry.parts.add(String(c.part));
    sheets.set(`${tool} ${die}`, entry);
  }
  return paperTable(
    [
      { title: 'Tool or applicator', share: 3, of: (t) => t.tool },
      { title: 'Die or setting', share: 2, of: (t) => t.die },
      { title: 'Contacts', share: 4, of: (t) => [...t.parts].join(', ') },
      { title: 'Sheets', share: 2, of: (t) => t.sheets.join(', ') },
      { title: 'Place, calibrated until', share: 3, of: () => '' },
    ],
    [...sheets.values()],
  );
}

function sheetBlocks(row: RowOf<CrimpKey>): PaperBlock[] {
  const c = row.cells;
  const mm = (value: unknown): string => (value === null ? 'not stated' : `${String(value)} mm`);
  return [
    {
      kind: 'matter',
      name: `Sheet ${c.sheet}: ${c.part} on ${[c.wire ?? 'wire not chosen', c.otherWires].filter((t) => t !== null).join(' + ')}`,
      state: `${c.quantity} per harness, ${c.orderQuantity} per order`,
    },
    {
      kind: 'fields',
      rows: [
        ['Part', `${c.kind} ${c.part}, ${c.maker}; series ${cellText(c.series)}, form ${cellText(c.form)}`],
        [
          'Wire',
          `${cellText(c.wire)}; ${cellText(c.size)}, ${cellText(c.strands)}; ${cellText(c.odMm)} mm outside`,
        ],
        ...(c.otherWires === null ? [] : [['Further wires', String(c.otherWires)] as [string, string]]),
        ['Tool, die', `${cellText(c.tool)}; die or setting ${cellText(c.die)}`],
        [
          'Strip length',
          c.stripMm === null ? 'not stated' : `${c.stripMm} ± ${cellText(c.stripToleranceMm)} mm`,
        ],
        [
          'Crimp height',
          c.heightMinMm === null ? mm(c.heightMm) : `${c.heightMm} mm (${c.heightMinMm} to ${c.heightMaxMm})`,
        ],
        ['Crimp width', mm(c.widthMm)],
        [
          'Insulation crimp',
          c.insulationHeightMm === null
            ? 'height not stated'
            : `height ${c.insulationHeightMm} mm (reference)`,
        ],
        ['Specification', cellText(c.specSource)],
        ['Pull-out force', c.pullMinN === null ? 'not stated' : `at least ${c.pullMinN} N (${c.pullSource})`],
        [
          'Tug when seated',
          c.retentionMaxN === null
            ? 'not stated'
            : `at most ${c.retentionMaxN} N (80 % of it: NASA-STD-8739.4, 13.8)`,
        ],
        [
          'Damaged strands',
          c.strandDamage === null ? 'stranding not stated' : `at most ${c.strandDamage}; ${STRAND_SOURCE}`,
        ],
        ['Each check', `${c.heightSamples} heights, ${c.pullSamples} pulls`],
        ['Used at', String(c.usedAt)],
        ...(c.remarks === null ? [] : [['Remarks', String(c.remarks)] as [string, string]]),
      ],
    },
    ...crimpForm(row),
  ];
}
