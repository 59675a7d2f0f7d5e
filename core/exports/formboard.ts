import { baselineOf } from '../model/baseline';
import { drawingBounds } from './drawing/drawing-bounds';
import type { Drawing } from './drawing/drawing';
import type { DocumentInput, Exporter } from './exporter';
import { boardFigures, framed } from './formboard/board-figures';
import { boardFoot } from './formboard/board-foot';
import { boardSummary } from './formboard/board-summary';
import { BOARD_COLUMNS, boardRows } from './formboard/formboard-rows';
import { formboardPaper } from './formboard/formboard-paper';
import { benchHead } from './paper/bench-paper';
import type { Table } from './table';

/** The board on which a harness is laid, at true size: as sheets to glue together, as one drawing, and as a list. */
export const formboard: Exporter = {
  id: 'formboard',
  title: 'Formboard',
  summary:
    'The board at true size: runs, connectors, coverings, dimensions and cavity tables; in files a list.',
  asks: ['sheetSize'],
  table: (input) => formboardTable(input),
  paper: (input) => formboardPaper(formboard, input),
  drawing: (input) => formboardDrawing(input),
};

function formboardTable({ harness }: DocumentInput): Table {
  const { scene } = boardFigures(harness);
  const rows = boardRows(harness, scene);
  return {
    id: formboard.id,
    title: formboard.title,
    head: benchHead(harness.project, formboard.title, boardSummary(harness)),
    columns: [...BOARD_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

/** The board with what a sheet says of itself below it. */
function formboardDrawing({ harness }: DocumentInput): Drawing {
  const { project } = harness;
  const { items } = boardFigures(harness);
  const below = drawingBounds({ widthMm: 1, heightMm: 1, items: [...items] }) ?? {
    minX: 0,
    minY: 0,
    maxX: 100,
    maxY: 0,
  };
  const head: Table['head'] = [
    ...benchHead(project, formboard.title, [
      ['Scale', '1:1, lengths in millimetres'],
      ['Before use', 'Hold a ruler to both bars of 100 mm.'],
    ]),
    ['Baseline (SHA-256)', baselineOf(project)],
  ];
  const notes = project.notes.map((note, i) => `Note ${i + 1}: ${note}`);
  return framed([...items, ...boardFoot(below, head, notes)]).drawing;
}
