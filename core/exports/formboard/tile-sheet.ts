import type { Box, Point } from '../../base/point';
import { itemBounds } from '../drawing/drawing-bounds';
import type { Drawing, DrawingItem } from '../drawing/drawing';
import { boxItem, lineItem, textItem } from '../drawing/items';
import { wrapText } from '../drawing/wrap-text';
import type { PaperBlock } from '../paper/paper';
import { type Sheet, type SheetSize, sheetMm } from '../paper/sheet';
import { sheetPlan } from '../paper/sheet-plan';
import { scaleBar } from './scale-bar';
import { figuresOnTiles } from './figures-on-tiles';
import { placeTiles } from './place-tiles';
import { OVERLAP_MM, type Size, type Tile, tileAt, type Tiling } from './tiles';

/** Bands inside the window: for the bars below and to the left, for the marks all around. */
const BAND_MM = { left: 9, right: 6, top: 6, bottom: 9 } as const;

/** What of a sheet shows the drawing. */
export function tileWindow(sheet: Sheet): Box {
  const { window } = sheetPlan(sheet);
  return {
    minX: window.minX + BAND_MM.left,
    minY: window.minY + BAND_MM.top,
    maxX: window.maxX - BAND_MM.right,
    maxY: window.maxY - BAND_MM.bottom,
  };
}

export const sizeOf = (box: Box): Size => ({ widthMm: box.maxX - box.minX, heightMm: box.maxY - box.minY });

/** Sheets of one kind with what each shows. */
export interface CutSheets {
  readonly sheet: Sheet;
  readonly tiling: Tiling;
}

/** The way of laying the sheets that needs fewer of them; upright where both need the same. */
export function sheetFor(drawing: Drawing, size: SheetSize): CutSheets {
  const figures = drawing.items.map(itemBounds);
  const [upright, landscape] = (['upright', 'landscape'] as const).map((orientation) => {
    const sheet: Sheet = { size, orientation };
    return { sheet, tiling: placeTiles(drawing, sizeOf(tileWindow(sheet)), figures) };
  }) as [CutSheets, CutSheets];
  return landscape.tiling.tiles.length < upright.tiling.tiles.length ? landscape : upright;
}

/** A drawing at true size on as many sheets as it takes, each with its marks, bars and map. */
export function tileSheets(
  drawing: Drawing,
  { sheet, tiling }: CutSheets,
): Extract<PaperBlock, { kind: 'sheet' }>[] {
  const onTile = figuresOnTiles(tiling, drawing.items.map(itemBounds));
  const window = tileWindow(sheet);
  return tiling.tiles.map((tile, i) => {
    const items = (onTile[i] ?? []).flatMap((k) => drawing.items[k] ?? []);
    return {
      kind: 'sheet',
      sheet,
      layers: [
        {
          drawing: { ...drawing, items },
          at: { x: window.minX - tile.area.minX, y: window.minY - tile.area.minY },
          clip: window,
        },
        { drawing: { ...sheetMm(sheet), items: marksOf(tile, tiling, sheet, i) }, at: { x: 0, y: 0 } },
      ],
    };
  });
}

function marksOf(tile: Tile, tiling: Tiling, sheet: Sheet, index: number): DrawingItem[] {
  const window = tileWindow(sheet);
  const { strip } = sheetPlan(sheet);
  return [
    boxItem(window, { line: 'hair' }),
    ...cropMarks(window),
    ...joins(tile, tiling, window),
    ...scaleBar({ x: window.minX + 6, y: window.maxY + 5.5 }, 'across', 'marks'),
    ...scaleBar({ x: window.minX - 3.5, y: window.minY + 6 }, 'down', 'marks'),
    ...placeOfSheet(tile, tiling, strip, index),
  ];
}

/** Short lines beyond the corners of the window, for cutting along it. */
function cropMarks({ minX, minY, maxX, maxY }: Box): DrawingItem[] {
  const [near, far] = [1, 4.5];
  const at = (from: Point, to: Point): DrawingItem => lineItem(from, to, { line: 'thin' });
  return [minX, maxX].flatMap((x) => {
    const out = x === minX ? -1 : 1;
    return [minY, maxY].flatMap((y) => {
      const down = y === minY ? -1 : 1;
      return [
        at({ x: x + out * near, y }, { x: x + out * far, y }),
        at({ x, y: y + down * near }, { x, y: y + down * far }),
      ];
    });
  });
}

/** The line along which two sheets meet: in the middle of what they share, with crosses that come to lie on each other. */
function joins(tile: Tile, tiling: Tiling, window: Box): DrawingItem[] {
  const items: DrawingItem[] = [];
  const middle = { x: (window.minX + window.maxX) / 2, y: (window.minY + window.maxY) / 2 };
  for (const side of [-1, 1]) {
    const column = tile.column + side;
    const beside = tileAt(tiling, column, tile.row);
    if (beside) {
      const x = side < 0 ? window.minX + OVERLAP_MM / 2 : window.maxX - OVERLAP_MM / 2;
      items.push(lineItem({ x, y: window.minY }, { x, y: window.maxY }, { line: 'hair', dash: 'dashed' }));
      for (const y of crossPlaces(window.minY, window.maxY)) items.push(...cross({ x, y }));
      const edge = side < 0 ? window.minX - 5.2 : window.maxX + 2.2;
      items.push(
        textItem(`joins ${beside.name}`, { x: edge + 1.6, y: side < 0 ? window.maxY - 8 : middle.y }, 1.8, {
          align: 'middle',
          angleDeg: -90,
        }),
      ); // prettier-ignore
    }
    const row = tile.row + side;
    const over = tileAt(tiling, tile.column, row);
    if (over) {
      const y = side < 0 ? window.minY + OVERLAP_MM / 2 : window.maxY - OVERLAP_MM / 2;
      items.push(lineItem({ x: window.minX, y }, { x: window.maxX, y }, { line: 'hair', dash: 'dashed' }));
      for (const x of crossPlaces(window.minX, window.maxX)) items.push(...cross({ x, y }));
      const edge = side < 0 ? window.minY - 1.8 : window.maxY + 4.5;
      items.push(
        textItem(`joins ${over.name}`, { x: side < 0 ? middle.x : window.maxX - 8, y: edge }, 1.8, {
          align: 'middle',
        }),
      ); // prettier-ignore
    }
  }
  return items;
}

const crossPlaces = (from: number, to: number): readonly number[] =>
  [0.25, 0.75].map((t) => from + (to - from) * t);

function cross({ x, y }: Point): DrawingItem[] {
  const arm = 3;
  return [
    lineItem({ x: x - arm, y }, { x: x + arm, y }, { line: 'thin' }),
    lineItem({ x, y: y - arm }, { x, y: y + arm }, { line: 'thin' }),
    { kind: 'circle', at: { x, y }, radiusMm: 1.5, line: 'thin' },
  ];
}

const NAME_MM = 7;
const NOTE_MM = 1.8;
const NOTE =
  'Scale 1:1. Print at 100 %, not fitted to the page. Check both 100 mm bars with a ruler before use. ' +
  'Join sheets at the dashed lines, cross on cross.';

/** Name of the sheet, what to check, and where the sheet lies among the others. */
function placeOfSheet(tile: Tile, tiling: Tiling, strip: Box, index: number): DrawingItem[] {
  const height = strip.maxY - strip.minY;
  const map = mapOf(tile, tiling, strip);
  const left = strip.minX + 3;
  const nameRoom = 19;
  const notes = wrapText(NOTE, NOTE_MM, map.left - 3 - left - nameRoom);
  return [
    boxItem(strip, { line: 'thin' }),
    textItem(tile.name, { x: left, y: strip.minY + 3 + NAME_MM }, NAME_MM, { look: 'strong' }),
    textItem(`sheet ${index + 1} of ${tiling.tiles.length}`, { x: left, y: strip.minY + height - 2.6 }, NOTE_MM),
    ...notes.map((line, i) =>
      textItem(line, { x: left + nameRoom, y: strip.minY + 3.6 + i * NOTE_MM * 1.65 }, NOTE_MM),
    ),
    ...map.items,
  ];
} // prettier-ignore

function mapOf(tile: Tile, tiling: Tiling, strip: Box): { left: number; items: DrawingItem[] } {
  const [roomX, roomY] = [Math.min(60, (strip.maxX - strip.minX) * 0.3), strip.maxY - strip.minY - 3];
  const { area } = tile;
  const cell = Math.min(roomX / tiling.columns / (area.maxX - area.minX), roomY / tiling.rows / (area.maxY - area.minY)); // prettier-ignore
  const [w, h] = [cell * (area.maxX - area.minX), cell * (area.maxY - area.minY)];
  const left = strip.maxX - 2 - w * tiling.columns;
  const top = (strip.minY + strip.maxY) / 2 - (h * tiling.rows) / 2;
  const boxOf = (t: Tile): Box => ({
    minX: left + t.column * w,
    minY: top + t.row * h,
    maxX: left + (t.column + 1) * w,
    maxY: top + (t.row + 1) * h,
  });
  const textMm = Math.min(2, h * 0.5, (w * 0.8) / 2.2);
  return {
    left,
    items: tiling.tiles.flatMap((t) => {
      const box = boxOf(t);
      const here = t.name === tile.name;
      return [
        boxItem(box, { line: here ? 'thick' : 'hair', ...(here ? { fill: 'light' as const } : {}) }),
        ...(textMm < 0.9 && !here
          ? []
          : [
              textItem(t.name, { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY + textMm) / 2 }, textMm, {
                align: 'middle',
              }),
            ]),
      ];
    }),
  };
} // prettier-ignore
