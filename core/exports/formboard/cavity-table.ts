import type { Box } from '../../base/point';
import type { Harness } from '../../derive/harness';
import { facePlaces, type FaceView } from '../../derive/face-places';
import type { BoardConnector } from '../../derive/formboard/scene/board-items';
import type { MatingHalf } from '../../model/parts/part';
import type { DrawingItem } from '../drawing/drawing';
import { boxItem, lineItem, textItem } from '../drawing/items';
import { scaleText } from '../drawing/scale';
import { textWidthMm } from '../drawing/text-width';
import { cellText } from '../paper/paper-table';
import { READABLE_MM } from '../pinouts/draw-cavity';
import { bodySizeOf, drawFace, FACE_MARGIN_MM } from '../pinouts/draw-face';
import { pinoutRows, type PinoutKey } from '../pinouts/pinout-rows';

const LAYER = 'tables';
const TITLE_MM = 2.5;
const TEXT_MM = 1.8;
const ROW_MM = 3.3;
const PAD_MM = 1;
/** A longer list goes on in another column. */
const ROWS_MOST = 16;

/** What of its pitch a cavity takes on a face. */
const CAVITY_SHARE = 0.86;

/** Who lays wires looks at the side where they go in. */
export const BOARD_VIEW: FaceView = 'wire-entry-face';
const VIEW_WORDS = 'view: wire-entry face';

const COLUMNS = [
  ['Cav.', 'cavity'],
  ['Wire', 'wire'],
  ['Colour', 'colour'],
  ['Size', 'size'],
  ['To', 'to'],
] as const satisfies readonly (readonly [string, PinoutKey])[];

export interface CavityTable {
  readonly width: number;
  readonly height: number;
  /** Its figures with its top left corner at a point. */
  draw(box: Box): readonly DrawingItem[];
}

/** The face of a connector as one sees it who puts wires in, the view named, and under it what goes into each cavity. */
export function cavityTable(harness: Harness, c: BoardConnector): CavityTable {
  const { connector, part } = c.use.resolved;
  const rows = pinoutRows(harness, c.use).map(({ cells }) => {
    const texts = COLUMNS.map(([, key]) => cells[key]);
    // A cavity without a wire tells its state instead.
    return cells.wire === null
      ? [cellText(cells.cavity), cellText(cells.state), '', '', '']
      : texts.map(cellText);
  });
  const widths = columnWidths(rows);
  const blocks = Math.max(1, Math.ceil(rows.length / ROWS_MOST));
  const perBlock = Math.ceil(rows.length / blocks);
  const blockWidth = widths.reduce((a, b) => a + b, 0);
  const face = part && { half: part, scale: faceScale(part) };
  const body = part ? bodySizeOf(part) : { widthMm: 0, heightMm: 0 };
  const faceHeight = face ? body.heightMm * face.scale + 2 * FACE_MARGIN_MM : 0;
  const title = `${connector.designator}  ${part?.partNumber ?? 'part not known'}`;
  const view = face ? `${VIEW_WORDS}, ${scaleText(face.scale)}` : 'no record: the face is not known';
  const width =
    Math.max(
      blocks * blockWidth + (blocks - 1) * 2,
      textWidthMm(title, TITLE_MM, 'strong'),
      textWidthMm(view, TEXT_MM),
      face ? body.widthMm * face.scale + 2 * FACE_MARGIN_MM : 0,
    ) +
    2 * PAD_MM;
  const top = TITLE_MM + TEXT_MM + 4.2;
  const height = top + faceHeight + (perBlock + 1) * ROW_MM + PAD_MM;

  const draw = (box: Box): readonly DrawingItem[] => {
    const left = box.minX + PAD_MM;
    const middle = { x: (box.minX + box.maxX) / 2, y: box.minY + top + faceHeight / 2 };
    const listTop = box.minY + top + faceHeight;
    return [
      boxItem(box, { line: 'thin', fill: 'paper', layer: LAYER }),
      textItem(title, { x: left, y: box.minY + 1.4 + TITLE_MM }, TITLE_MM, { look: 'strong', layer: LAYER }),
      textItem(view, { x: left, y: box.minY + 3 + TITLE_MM + TEXT_MM }, TEXT_MM, { layer: LAYER }),
      ...(face ? drawFace(c.use, face.half, BOARD_VIEW, middle, face.scale).map(onLayer) : []),
      ...Array.from({ length: blocks }, (_, i) =>
        list(rows.slice(i * perBlock, (i + 1) * perBlock), widths, left + i * (blockWidth + 2), listTop),
      ).flat(),
    ];
  };
  return { width, height, draw };
}

const SCALES = [1, 1.5, 2, 2.5, 3, 3.5, 4] as const;
const FACE_WIDTH_MM = 90;

/** Large enough to read the numbers in the cavities, as far as the face then has room beside its connector. */
function faceScale(half: MatingHalf): number {
  const { pitchMm, rowPitchMm, spanYMm } = facePlaces(half, BOARD_VIEW);
  const nearest = spanYMm > 0 ? Math.min(pitchMm, rowPitchMm) : pitchMm;
  const fitting = SCALES.filter((s) => s === 1 || s * bodySizeOf(half).widthMm <= FACE_WIDTH_MM);
  return fitting.find((s) => CAVITY_SHARE * s * nearest >= READABLE_MM) ?? fitting.at(-1) ?? 1;
}

const onLayer = (item: DrawingItem): DrawingItem => ({ ...item, layer: LAYER });

const columnWidths = (rows: readonly (readonly string[])[]): readonly number[] =>
  COLUMNS.map(
    ([title], i) =>
      // A state runs over the columns that are empty beside it.
      Math.max(
        textWidthMm(title, TEXT_MM, 'strong'),
        ...rows.map((r) => (r.length > i && !(i === 1 && r[2] === '') ? textWidthMm(r[i] ?? '', TEXT_MM) : 0)),
      ) + 2,
  ); // prettier-ignore

function list(
  rows: readonly (readonly string[])[],
  widths: readonly number[],
  left: number,
  top: number,
): DrawingItem[] {
  const line = (texts: readonly string[], row: number, strong: boolean): DrawingItem[] => {
    let x = left;
    return texts.flatMap((text, i) => {
      const at = { x, y: top + (row + 1) * ROW_MM - (strong ? 1 : 0.6) };
      x += widths[i] ?? 0;
      return text === '' ? [] : [textItem(text, at, TEXT_MM, { layer: LAYER, ...(strong ? { look: 'strong' as const } : {}) })]; // prettier-ignore
    });
  };
  const right = left + widths.reduce((a, b) => a + b, 0) - 1;
  return [
    ...line(COLUMNS.map(([title]) => title), 0, true), // prettier-ignore
    lineItem({ x: left, y: top + ROW_MM }, { x: right, y: top + ROW_MM }, { line: 'hair', layer: LAYER }),
    ...rows.flatMap((texts, i) => line(texts, i + 1, false)),
  ];
}
