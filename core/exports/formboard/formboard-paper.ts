import type { DocumentInput, Exporter } from '../exporter';
import { benchPaper } from '../paper/bench-paper';
import { paperTable, plainText } from '../paper/paper-table';
import type { Paper, PaperBlock } from '../paper/paper';
import { A4_UPRIGHT, type Sheet, type SheetSize } from '../paper/sheet';
import type { Cell } from '../table';
import { framedBoard } from './board-figures';
import { boardRows, type BoardKey, type BoardRow } from './formboard-rows';
import { boardSummary } from './board-summary';
import { overview } from './overview';
import { sheetFor, tileSheets } from './tile-sheet';

/** Every office has it. */
const USUAL_SIZE: SheetSize = 'A4';

/** What an upright A4 or Letter has room for under the summary. */
const OVERVIEW_MM = { widthMm: 170, heightMm: 120 } as const;

/** The formboard as pages: overview, notes and lists first, then the board at true size, sheet by sheet. */
export function formboardPaper(exporter: Exporter, input: DocumentInput): Paper {
  const { harness, options } = input;
  const size = options?.sheetSize ?? USUAL_SIZE;
  const lists: Sheet =
    size === 'Letter' || size === 'Tabloid' ? { size: 'Letter', orientation: 'upright' } : A4_UPRIGHT;
  const { scene, drawing, onDrawing } = framedBoard(harness);
  if (scene.nodes.length === 0)
    return benchPaper(exporter, input, boardSummary(harness), [plainText('The formboard is empty: no node is placed.')], lists); // prettier-ignore
  const cut = sheetFor(drawing, size);
  const { sheet, tiling } = cut;
  const small = overview(scene, drawing, onDrawing, tiling, OVERVIEW_MM);
  const rows = boardRows(harness, scene);
  return benchPaper(
    exporter,
    input,
    [
      ...boardSummary(harness),
      ['Sheets', `${tiling.tiles.length} of ${size} ${sheet.orientation}, ${tiling.columns} across and ${tiling.rows} down, after these pages`],
      ['Before use', 'Print at 100 %, not fitted to the page. Hold a ruler to both 100 mm bars of every sheet.'],
    ],
    [
      { kind: 'heading', text: 'Overview' },
      { kind: 'drawing', drawing: small.drawing, scale: small.scale, caption: 'The board and the sheets it is cut into (dashed)' },
      ...notes(harness.project.notes),
      ...listBlocks(rows),
      ...tileSheets(drawing, cut),
    ],
    lists,
  );
} // prettier-ignore

const notes = (texts: readonly string[]): PaperBlock[] =>
  texts.length === 0
    ? []
    : [{ kind: 'heading', text: 'Build notes' }, ...texts.map((t, i) => plainText(`${i + 1}. ${t}`))];

const cell =
  (key: BoardKey) =>
  (r: BoardRow): Cell =>
    r.cells[key];

function listBlocks(rows: readonly BoardRow[]): PaperBlock[] {
  const of = (...kinds: readonly string[]): BoardRow[] => rows.filter((r) => kinds.includes(String(r.cells.kind)));
  const list = (text: string, some: readonly BoardRow[], columns: Parameters<typeof paperTable<BoardRow>>[0]) =>
    some.length === 0 ? [] : [{ kind: 'heading' as const, text }, paperTable(columns, some)];
  return [
    ...list('Segments', of('segment'), [
      { title: 'Segment', share: 1.6, of: cell('name') },
      { title: 'From', share: 1.4, of: cell('from') },
      { title: 'To', share: 1.4, of: cell('to') },
      { title: 'Length, mm', share: 2, align: 'right', of: cell('length') },
      { title: 'Tolerance, mm', share: 2.1, of: (r) => toleranceOf(r) },
      { title: 'Wires', share: 1.1, align: 'right', of: cell('wires') },
      { title: 'Bundle Ø, mm', share: 2.1, align: 'right', of: cell('bundle') },
      { title: 'Remarks', share: 5, of: (r) => r.cells.remarks ?? '' },
    ]),
    ...list('Nodes, connectors and splices', of('node', 'connector', 'splice'), [
      { title: 'Kind', share: 1.8, of: cell('kind') },
      { title: 'Name', share: 1.6, of: cell('name') },
      { title: 'Part number', share: 3, of: (r) => r.cells.part ?? '' },
      { title: 'At node', share: 1.6, of: (r) => r.cells.from ?? '' },
      { title: 'X, mm', share: 1.5, align: 'right', of: cell('x') },
      { title: 'Y, mm', share: 1.5, align: 'right', of: cell('y') },
      { title: 'Direction °', share: 1.8, align: 'right', of: (r) => r.cells.direction ?? '' },
      { title: 'Remarks', share: 3.4, of: (r) => r.cells.remarks ?? '' },
    ]),
    ...list('Coverings, ties, clamps, grommets and labels', of('covering', 'tie', 'clamp', 'grommet', 'label'), [
      { title: 'Kind', share: 1.6, of: cell('kind') },
      { title: 'Name', share: 2.6, of: (r) => r.cells.name ?? '' },
      { title: 'Part number', share: 2.6, of: cell('part') },
      { title: 'From', share: 2.4, of: cell('from') },
      { title: 'To', share: 2.4, of: (r) => r.cells.to ?? '' },
      { title: 'Length, mm', share: 2, align: 'right', of: (r) => r.cells.length ?? '' },
      { title: 'Remarks', share: 2.6, of: (r) => r.cells.remarks ?? '' },
    ]),
  ];
} // prettier-ignore

const toleranceOf = ({ cells: { plus, minus } }: BoardRow): string =>
  plus === null && minus === null ? '' : `+${plus ?? '?'}/-${minus ?? '?'}`;
