import type { Harness } from '../derive/harness';
import { testCoverage } from '../derive/harness-test/coverage';
import { FAULT_KINDS, type FaultKind } from '../derive/harness-test/faults';
import { CONTINUITY_FACTOR, LEADS_OHM } from '../derive/harness-test/loop-resistance';
import { testModelOf } from '../derive/harness-test/test-model';
import type { DocumentInput, Exporter } from './exporter';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper, PaperBlock } from './paper/paper';
import { paperTable, plainText, type PaperColumn } from './paper/paper-table';
import { A4_LANDSCAPE } from './paper/sheet';
import type { Table } from './table';
import { TEST_COLUMNS, type TestKey, type TestRow } from './test-table/test-columns';
import { netName, signalsOf, testRows } from './test-table/test-rows';

/** The electrical test, made from the nets and tried against seeded faults: it says which of them it finds. */
export const testTable: Exporter = {
  id: 'test-table',
  title: 'Test table',
  summary:
    'Continuity, isolation, components and presence from the nets; tried on the harness with seeded faults.',
  table: ({ harness }) => testTableOf(harness),
  paper: (input) => testPaper(input),
};

function testTableOf(harness: Harness): Table {
  const rows = testRows(harness);
  return {
    id: testTable.id,
    title: testTable.title,
    head: benchHead(harness.project, testTable.title, summaryOf(harness)),
    columns: [...TEST_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

function summaryOf(harness: Harness): [string, string][] {
  const { nets, unwired, connectors, wires } = testModelOf(harness);
  const { counts, missed } = testCoverage(harness);
  const sum = (of: 'made' | 'found'): number => FAULT_KINDS.reduce((n, k) => n + counts[k][of], 0);
  return [
    ['Nets', `${nets.length} of ${wires.length} wires, ${connectors.length} connectors, all unmated`],
    ['Unwired positions probed', String(unwired.length)],
    ['Seeded faults', `${sum('found')} of ${sum('made')} found, one at a time`],
    ...FAULT_KINDS.map((k): [string, string] => [
      KIND_WORDS[k][0],
      `${counts[k].found} of ${counts[k].made} found: ${KIND_WORDS[k][1]}`,
    ]),
    [
      'Not found',
      missed.length === 0 ? 'none of the seeded faults' : `${missed.length}, named at the end of the table`,
    ],
    [
      'Not tried',
      'two faults at once; a wrong part, size or colour that connects the same points; what comes and goes',
    ],
    [
      'Continuity limit',
      `shortest way at 20 degC x ${CONTINUITY_FACTOR} + ${LEADS_OHM} ohm of leads (common practice; without leads in four-wire measurement)`,
    ],
    [
      'Test voltage',
      'never above the lowest rating of the parts on the net; blank where one is not stated: cannot be verified',
    ],
    [
      'Which tests',
      'IPC/WHMA-A-620 B, table 19-1: continuity always, isolation unless withstand or insulation resistance is tested; these for class 3 and some of class 2',
    ],
  ];
}

const KIND_WORDS: Readonly<Record<FaultKind, readonly [string, string]>> = {
  open: ['Opens', 'a wire missing, a contact not seated, an end not caught in its splice'],
  short: ['Shorts', 'two nets that touch'],
  swap: ['Swaps', 'two contacts exchanged within a connector'],
  'wrong-cavity': ['Wrong cavities', 'a contact in a cavity that is meant to hold none'],
};

function testPaper(input: DocumentInput): Paper {
  const { harness } = input;
  const rows = testRows(harness);
  const of = (...tests: string[]): TestRow[] => rows.filter((r) => tests.includes(String(r.cells.test)));
  return benchPaper(
    testTable,
    input,
    summaryOf(harness),
    [
      plainText(
        'A sample that is taken for good proves nothing: this table is made from the model, not learned. – : not known, or left to agreement.',
      ),
      section('Adapters', of('adapter'), ADAPTER),
      section('Presence', of('presence'), SHORT),
      section('Nets', [], SHORT),
      netsBlock(harness),
      section('Continuity', of('continuity'), CONTINUITY),
      section('Isolation', of('isolation'), ISOLATION),
      section('Unwired positions: joined to nothing', of('unwired position'), SHORT),
      section('Components, by eye', of('component, by eye'), SHORT),
      section('Seeded faults that this test does not find', of('not found by this test'), MISSED),
    ].flat(),
    A4_LANDSCAPE,
  );
}

const cell =
  (key: TestKey): PaperColumn<TestRow>['of'] =>
  (row) =>
    row.cells[key];
const STEP = { title: 'Step', share: 0.8, align: 'right' as const, of: cell('step') };
const REMARKS = { title: 'Remarks', share: 5, of: (r: TestRow) => r.cells.remarks ?? '' };
const RESULT = { title: 'Result', share: 1.2, of: () => '' };

const ADAPTER = [STEP, { title: 'Connector', share: 2, of: cell('from') }, { title: 'Half on the adapter', share: 3, of: cell('to') }, { title: 'From', share: 3, of: cell('source') }, REMARKS]; // prettier-ignore
const SHORT = [STEP, { title: 'At', share: 2, of: cell('from') }, { title: 'Object', share: 3, of: cell('to') }, { title: 'Expected', share: 3, of: cell('expected') }, RESULT, REMARKS]; // prettier-ignore
const CONTINUITY = [
  STEP,
  { title: 'Net', share: 1, of: cell('net') },
  { title: 'Signal', share: 2.2, of: cell('signal') },
  { title: 'From', share: 1.6, of: cell('from') },
  { title: 'To', share: 1.6, of: cell('to') },
  { title: 'Ohm, at most', share: 1.5, align: 'right' as const, of: cell('limitOhm') },
  {
    title: 'Wires and joints at 20 °C (ohm)',
    share: 2.6,
    align: 'right' as const,
    of: cell('computedOhm'),
  },
  RESULT,
  { ...REMARKS, of: (r: TestRow) => continuityRemarks(r) },
];
const ISOLATION = [
  STEP,
  { title: 'Net', share: 1, of: cell('net') },
  { title: 'Signal', share: 2.2, of: cell('signal') },
  { title: 'Driven at', share: 1.6, of: cell('from') },
  { title: 'Against', share: 2.6, of: cell('to') },
  { title: 'V, at most', share: 1.3, align: 'right' as const, of: cell('testVoltageMaxV') },
  { title: 'Mohm, at least', share: 1.5, align: 'right' as const, of: cell('insulationMohm') },
  RESULT,
  { title: 'Voltage by', share: 3.4, of: (r: TestRow) => String(r.cells.source ?? '–').split(';')[0] ?? '–' },
  { title: 'Remarks', share: 4, of: (r: TestRow) => withoutAgreement(String(r.cells.remarks ?? '')) },
];
const MISSED = [STEP, { title: 'Fault', share: 5, of: cell('from') }, { title: 'Why', share: 6, of: cell('remarks') }]; // prettier-ignore

/** The formula stands in the summary; what differs from step to step is said here. */
function continuityRemarks({ cells }: TestRow): string {
  const [, assumed] = String(cells.source ?? '').split('; ');
  return [assumed, cells.remarks].filter((t) => t !== undefined && t !== null).join('; ');
}

/** Said once above instead of in every row. */
const withoutAgreement = (text: string): string =>
  text.replace(/(; )?insulation resistance and leakage: as agreed for the product class$/, '');

function section(
  title: string,
  rows: readonly TestRow[],
  columns: readonly PaperColumn<TestRow>[],
): PaperBlock[] {
  if (title !== 'Nets' && rows.length === 0) return [{ kind: 'heading', text: title }, plainText('None.')];
  const heading = { kind: 'heading' as const, text: rows.length > 0 ? `${title} (${rows.length})` : title };
  return rows.length > 0 ? [heading, paperTable(columns, rows)] : [heading];
}

function netsBlock(harness: Harness): PaperBlock {
  const nets = testModelOf(harness).nets.map((net, i) => ({ net, name: netName(i) }));
  return paperTable(
    [
      { title: 'Net', share: 1, of: (n) => n.name },
      { title: 'Signal', share: 2.4, of: (n) => signalsOf(n.net) },
      { title: 'Points', share: 8, of: (n) => n.net.points.map((p) => p.text).join('  ') },
      { title: 'Wires', share: 5, of: (n) => n.net.wires.map((w) => w.wire.wire.designator).join('  ') },
    ],
    nets,
  );
}
