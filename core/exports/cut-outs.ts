import type { Harness } from '../derive/harness';
import { baselineOf } from '../model/baseline';
import { CUT_OUT_COLUMNS, panelRow, patternRows, SIDE_WORDS } from './cut-outs/cut-out-rows';
import { boardPatterns, panelCuts, type BoardPattern, type PanelCut } from './cut-outs/cut-out-sources';
import { drawBoardPattern } from './cut-outs/draw-board-pattern';
import { drawPanelCut, onSheet } from './cut-outs/draw-panel-cut';
import { drawingBounds } from './drawing/drawing-bounds';
import type { Drawing, DrawingItem } from './drawing/drawing';
import { moved, textItem } from './drawing/items';
import type { DocumentInput, Exporter } from './exporter';
import { boardFoot } from './formboard/board-foot';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper, PaperBlock } from './paper/paper';
import { cellText, plainText } from './paper/paper-table';
import { A4_UPRIGHT } from './paper/sheet';
import type { Table } from './table';

/** The holes that panels and boards need for the connectors of the project, at true size. */
export const cutOuts: Exporter = {
  id: 'cut-outs',
  title: 'Cut-outs and hole patterns',
  summary: 'Panel cut-outs and board hole patterns at true size, with the side of insertion and position 1.',
  table: ({ harness }) => cutOutTable(harness),
  paper: (input) => cutOutPaper(input),
  drawing: ({ harness }) => cutOutDrawing(harness),
};

function cutOutTable(harness: Harness): Table {
  const rows = [
    ...panelCuts(harness).map((c) => panelRow(harness, c)),
    ...boardPatterns(harness).flatMap(patternRows),
  ];
  return {
    id: cutOuts.id,
    title: cutOuts.title,
    head: benchHead(harness.project, cutOuts.title, summaryOf(harness)),
    columns: [...CUT_OUT_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

const summaryOf = (harness: Harness): [string, string][] => [
  ['Panel cut-outs', String(panelCuts(harness).length)],
  ['Board hole patterns', String(boardPatterns(harness).length)],
  ['Scale', '1:1, lengths in millimetres; hold a ruler to the bar of each drawing before use'],
  [
    'Hole patterns',
    'from pitch, rows and numbering of the records; lands, lock and peg places come from the drawing of the part',
  ],
];

const panelName = ({ use }: PanelCut): string =>
  `${use.resolved.connector.designator}  ${use.resolved.part?.partNumber ?? ''}`;
const patternName = ({ use, header }: BoardPattern): string =>
  `${use.resolved.connector.designator}  ${header.partNumber}`;

function panelWords(harness: Harness, cut: PanelCut): string {
  const { cells: c } = panelRow(harness, cut);
  return [
    'seen from the front of the panel',
    cut.insertFrom ? `connector put in from the ${cut.insertFrom}` : 'side of insertion not stated',
    `tolerance ± ${cellText(c.toleranceMm)} mm`,
    `panel with coatings ${cellText(c.thicknessMm)} mm, part takes ${cellText(c.thicknessMinMm)} to ${cellText(c.thicknessMaxMm)} mm`,
    `size: ${cut.basis ?? 'not stated'}`,
    ...cut.remarks,
  ].join('; ');
}

const patternWords = ({ seenFrom, header, remarks }: BoardPattern): string =>
  [
    `seen from the ${SIDE_WORDS[seenFrom]}`,
    `${header.orientation ?? 'orientation not stated'}, ${header.termination ?? 'termination not stated'}`,
    'square: position 1',
    ...remarks,
  ].join('; ');

function cutOutPaper(input: DocumentInput): Paper {
  const { harness } = input;
  const blocks = [
    ...panelCuts(harness).flatMap((cut): PaperBlock[] => {
      const drawing = drawPanelCut(cut);
      const { resolved } = cut.use;
      return [
        {
          kind: 'matter',
          name: panelName(cut),
          state: `cut-out in ${resolved.equipment?.designator ?? 'a panel'}`,
        },
        ...(drawing
          ? [{ kind: 'drawing' as const, drawing, caption: panelWords(harness, cut) }]
          : [plainText(panelWords(harness, cut))]),
      ];
    }),
    ...boardPatterns(harness).flatMap((pattern): PaperBlock[] => [
      {
        kind: 'matter',
        name: patternName(pattern),
        state: `holes in ${pattern.use.resolved.equipment?.designator ?? 'a board'}`,
      },
      { kind: 'drawing', drawing: drawBoardPattern(pattern), caption: patternWords(pattern) },
    ]),
  ];
  return benchPaper(
    cutOuts,
    input,
    summaryOf(harness),
    blocks.length > 0 ? blocks : [plainText('No connector of this project stands in a panel or on a board.')],
    A4_UPRIGHT,
  );
}

const GAP_MM = 14;
const SHEET_WIDTH_MM = 400;

/** All of them side by side, row by row, each under its name; below, what a file says of itself. */
function cutOutDrawing(harness: Harness): Drawing {
  const pieces = [
    ...panelCuts(harness).flatMap((c) => {
      const drawing = drawPanelCut(c);
      return drawing ? [{ drawing, name: panelName(c), words: c.insertFrom ? `put in from the ${c.insertFrom}` : 'side of insertion not stated' }] : [];
    }),
    ...boardPatterns(harness).map((p) => ({
      drawing: drawBoardPattern(p),
      name: patternName(p),
      words: `seen from the ${SIDE_WORDS[p.seenFrom]}`,
    })),
  ]; // prettier-ignore
  const items: DrawingItem[] = [];
  let [x, y, tall] = [0, 0, 0];
  for (const { drawing, name, words } of pieces) {
    if (x > 0 && x + drawing.widthMm > SHEET_WIDTH_MM) [x, y, tall] = [0, y + tall + GAP_MM, 0];
    items.push(textItem(name, { x, y: y + 3 }, 2.6, { look: 'strong', layer: 'names' }));
    items.push(textItem(words, { x, y: y + 7 }, 2.2, { layer: 'names' }));
    items.push(...drawing.items.map((i) => moved(i, x, y + 10)));
    tall = Math.max(tall, drawing.heightMm + 10);
    x += drawing.widthMm + GAP_MM;
  }
  const below = drawingBounds({ widthMm: 1, heightMm: 1, items }) ?? { minX: 0, minY: 0, maxX: 100, maxY: 0 };
  const head = [
    ...benchHead(harness.project, cutOuts.title, summaryOf(harness)),
    ['Baseline (SHA-256)', baselineOf(harness.project)] as const,
  ];
  return onSheet([...items, ...boardFoot(below, head, [])], 10);
}
