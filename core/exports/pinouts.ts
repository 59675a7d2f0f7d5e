import type { ConnectorUse, Harness } from '../derive/harness';
import type { DocumentInput, Exporter } from './exporter';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper, PaperBlock } from './paper/paper';
import { paperTable, plainText } from './paper/paper-table';
import { A4_LANDSCAPE } from './paper/sheet';
import { drawPinout } from './pinouts/draw-pinout';
import { shopConnectors } from './pinouts/pinout-connectors';
import { fittedParts, PINOUT_COLUMNS, pinoutRows, type PinoutKey } from './pinouts/pinout-rows';
import type { Cell, RowOf, Table } from './table';

/** Every cavity of every connector of the harness, on paper with both faces drawn to scale and named. */
export const pinouts: Exporter = {
  id: 'pinouts',
  title: 'Pinouts',
  summary: 'Every cavity with its wire, contact and state; on paper the mating face and the wire-entry face.',
  table: ({ harness }) => pinoutTable(harness),
  paper: (input) => pinoutPaper(input),
};

function pinoutTable(harness: Harness): Table {
  const connectors = shopConnectors(harness);
  const rows = connectors.flatMap((use) => pinoutRows(harness, use));
  return {
    id: pinouts.id,
    title: pinouts.title,
    head: benchHead(harness.project, pinouts.title, summaryOf(harness, connectors)),
    columns: [...PINOUT_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

function summaryOf(harness: Harness, connectors: readonly ConnectorUse[]): [string, string][] {
  const open = connectors.flatMap((c) => c.cavities).filter((c) => c.state === 'undeclared').length;
  return [
    ['Connectors', String(connectors.length)],
    ['Cavities', String(connectors.reduce((sum, c) => sum + c.cavities.length, 0))],
    ['Undeclared cavities', open === 0 ? 'none' : `${open}: not to be built before they are declared`],
    [
      'Not listed',
      `${harness.connectors.length - connectors.length} connectors that come with the equipment and hold no wire of the harness`,
    ],
  ];
}

function pinoutPaper(input: DocumentInput): Paper {
  const { harness } = input;
  const connectors = shopConnectors(harness);
  return benchPaper(
    pinouts,
    input,
    summaryOf(harness, connectors),
    [plainText(LEGEND), ...connectors.flatMap((use) => connectorBlocks(harness, use))],
    A4_LANDSCAPE,
  );
}

const LEGEND =
  'Marks: filled dot pin, ring socket, cross plugged, filled square blocked, dash empty by intent, open square nothing loaded. ' +
  'Filled corner and thick frame: cavity 1. The sign of the key shows its code, not its place. Letters in the wire-entry view: wire colour. – : not known.';

function connectorBlocks(harness: Harness, use: ConnectorUse): PaperBlock[] {
  const { connector, part } = use.resolved;
  const rows = pinoutRows(harness, use);
  const drawn = part && drawPinout(use, part);
  return [
    {
      kind: 'matter',
      name: [connector.designator, part?.partNumber ?? 'part not known'].join('  '),
      state: connector.description ?? '',
    },
    ...(drawn
      ? [
          {
            kind: 'drawing' as const,
            drawing: drawn.drawing,
            scale: drawn.scale,
            caption: `${wordsOf(harness, use)}; ${drawn.caption}`,
          },
        ]
      : [plainText(wordsOf(harness, use))]),
    paperTable(PAPER_COLUMNS, rows),
  ];
}

type Row = RowOf<PinoutKey>;
const cell =
  (key: PinoutKey) =>
  (row: Row): Cell =>
    row.cells[key];

const PAPER_COLUMNS = [
  { title: 'Cavity', share: 1.5, of: cell('cavity') },
  { title: 'State', share: 2, of: cell('state') },
  { title: 'Signal', share: 3, of: cell('signal') },
  { title: 'Wire', share: 1.6, of: cell('wire') },
  { title: 'Colour', share: 1.7, of: cell('colour') },
  { title: 'Size', share: 2, of: cell('size') },
  { title: 'Contact', share: 3.6, of: cell('contact') },
  { title: 'Seal, plug', share: 3, of: cell('sealOrPlug') },
  { title: 'Goes to', share: 1.8, of: cell('to') },
  {
    title: 'Mate',
    share: 1.9,
    of: (r: Row) => (r.cells.mate === null ? null : `${r.cells.mate}:${r.cells.mateCavity ?? '?'}`),
  },
  { title: 'Remarks', share: 2.6, of: (r: Row) => r.cells.remarks ?? '' },
];

/** Body, contacts, keying, locks: what tells this connector from one that looks like it. */
function wordsOf(harness: Harness, use: ConnectorUse): string {
  const { part, equipment } = use.resolved;
  const fitted = fittedParts(harness, use);
  return [
    part?.bodyForm ?? 'body form not stated',
    part?.contactKind ? `for ${part.contactKind} contacts` : 'contact kind not stated',
    part?.keying ? `keying ${part.keying}` : 'keying not stated',
    part?.numbering && (part.rows ?? 1) > 1 ? `numbered ${part.numbering}` : undefined,
    fitted.length > 0 ? `fitted: ${fitted.join(', ')}` : 'no lock or other part fitted',
    equipment ? `at ${equipment.designator}` : undefined,
  ]
    .filter((t) => t !== undefined)
    .join('; ');
}
