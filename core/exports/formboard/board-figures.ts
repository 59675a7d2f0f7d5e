import { type Box, type Point } from '../../base/point';
import { memoByIdentity } from '../../base/memo-by-identity';
import { buildBoardScene } from '../../derive/formboard/scene/build-board-scene';
import type { BoardScene } from '../../derive/formboard/scene/board-items';
import type { Harness } from '../../derive/harness';
import { drawingBounds } from '../drawing/drawing-bounds';
import type { Drawing, DrawingItem } from '../drawing/drawing';
import { moved } from '../drawing/items';
import { BoardSheet } from './board-sheet';
import { cavityTable } from './cavity-table';
import { drawAngles } from './draw-angles';
import { along, reachMm } from './draw-body';
import { drawConnectors } from './draw-connectors';
import { drawDimensions } from './draw-dimensions';
import { drawRuns, nameRuns } from './draw-runs';
import { drawThings, nameThings } from './draw-things';

/** Room around the board, mm. */
const MARGIN_MM = 10;

export interface BoardFigures {
  readonly scene: BoardScene;
  /** In the coordinates of the project. */
  readonly items: readonly DrawingItem[];
}

/** The board with everything that stands on it, at true size. First what has its place, then the names and tables around it. */
export const boardFigures = memoByIdentity((harness: Harness): BoardFigures => {
  const scene = buildBoardScene(harness);
  const sheet = new BoardSheet();
  drawRuns(sheet, scene);
  drawConnectors(sheet, scene);
  drawThings(sheet, scene);
  drawDimensions(sheet, scene);
  nameRuns(sheet, scene);
  nameThings(sheet, scene);
  drawAngles(sheet, scene);
  for (const c of scene.connectors) {
    const table = cavityTable(harness, c);
    const clearMm = Math.max(reachMm(c) - c.alongMm / 2, c.acrossMm / 2) + 2;
    const options = { clearMm, liked: c.angle, layer: 'leaders', under: true } as const;
    sheet.place(table, along(c, c.alongMm / 2), options, table.draw);
  }
  return { scene, items: [...sheet.under, ...sheet.items] };
});

/** Figures as a drawing of its own, and where a point of the board lies on it. */
export function framed(items: readonly DrawingItem[]): { drawing: Drawing; onDrawing(p: Point): Point } {
  const bounds: Box = drawingBounds({ widthMm: 1, heightMm: 1, items: [...items] }) ?? {
    minX: 0,
    minY: 0,
    maxX: 100,
    maxY: 100,
  };
  const [dx, dy] = [MARGIN_MM - bounds.minX, MARGIN_MM - bounds.minY];
  return {
    drawing: {
      widthMm: bounds.maxX - bounds.minX + 2 * MARGIN_MM,
      heightMm: bounds.maxY - bounds.minY + 2 * MARGIN_MM,
      items: items.map((item) => moved(item, dx, dy)),
    },
    onDrawing: (p) => ({ x: p.x + dx, y: p.y + dy }),
  };
}

/** The board as a drawing of its own. */
export const framedBoard = memoByIdentity((harness: Harness) => {
  const { scene, items } = boardFigures(harness);
  return { scene, ...framed(items) };
});
