import type { Box } from '../../base/point';
import type { DrawingItem } from '../drawing/drawing';
import { boxItem, textItem } from '../drawing/items';
import { textWidthMm } from '../drawing/text-width';
import { wrapText } from '../drawing/wrap-text';
import { BAR_MM, scaleBar } from './scale-bar';

const LAYER = 'sheet';
const TEXT_MM = 2.5;
const LINE_MM = 4.4;
const LABEL_MM = 52;
const WIDTH_MM = 190;

/**
 * What a file of the board says of itself, below the board: the fields of a title block, the notes, the cautions, and bars of
 * 100 mm in both directions.
 */
export function boardFoot(
  below: Box,
  fields: readonly (readonly [string, string])[],
  notes: readonly string[],
): DrawingItem[] {
  const left = below.minX;
  const top = below.maxY + 15;
  const textLeft = left + 22;
  const valueLeft = textLeft + LABEL_MM;
  const lines: DrawingItem[] = [];
  let y = top + LINE_MM;
  for (const [label, value] of fields) {
    lines.push(textItem(label, { x: textLeft, y }, TEXT_MM, { layer: LAYER }));
    for (const line of wrapText(value, TEXT_MM, WIDTH_MM - LABEL_MM - 4)) {
      lines.push(textItem(line, { x: valueLeft, y }, TEXT_MM, { look: 'strong', layer: LAYER }));
      y += LINE_MM;
    }
  }
  for (const note of notes) {
    y += 1;
    for (const line of wrapText(note, TEXT_MM, WIDTH_MM - 4)) {
      lines.push(textItem(line, { x: textLeft, y }, TEXT_MM, { layer: LAYER }));
      y += LINE_MM;
    }
  }
  const widest = lines.reduce(
    (most, i) => (i.kind === 'text' ? Math.max(most, i.at.x + textWidthMm(i.text, i.heightMm, i.look)) : most),
    textLeft + WIDTH_MM,
  );
  return [
    ...scaleBar({ x: left + 8, y: top }, 'down'),
    ...scaleBar({ x: textLeft, y: Math.max(y + 4, top + BAR_MM) }, 'across'),
    boxItem({ minX: textLeft - 3, minY: top - 1, maxX: widest + 3, maxY: y - 1 }, { line: 'thin', layer: LAYER }),
    ...lines,
  ];
} // prettier-ignore
