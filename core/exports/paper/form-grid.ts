import type { Drawing, DrawingItem } from '../drawing/drawing';
import { textWidthMm } from '../drawing/text-width';

export interface GridColumn {
  readonly title: string;
  /** Part of the width. */
  readonly share: number;
}

/** What an A4 page upright has room for, mm. */
export const FORM_WIDTH_MM = 170;
const HEAD_MM = 5;
const CAP_MM = 1.9;

/**
 * A form with boxes to write in: titles, then rows with what is known printed and the rest left free. A text that is too wide
 * for its box is set smaller, and cut with dots where even that does not help.
 */
export function formGrid(
  columns: readonly GridColumn[],
  rows: readonly (readonly string[])[],
  { rowMm = 7, widthMm = FORM_WIDTH_MM }: { readonly rowMm?: number; readonly widthMm?: number } = {},
): Drawing {
  const shares = columns.reduce((sum, c) => sum + c.share, 0);
  const edges = columns.reduce<number[]>(
    (xs, c) => [...xs, (xs.at(-1) ?? 0) + (widthMm * c.share) / shares],
    [0],
  );
  const heightMm = HEAD_MM + rows.length * rowMm;
  const line = (x0: number, y0: number, x1: number, y1: number, thick = false): DrawingItem => ({
    kind: 'polyline',
    points: [
      { x: x0, y: y0 },
      { x: x1, y: y1 },
    ],
    line: thick ? 'thin' : 'hair',
  });
  const cell = (text: string, column: number, baseline: number, isTitle: boolean): DrawingItem[] => {
    const x = edges[column] ?? 0;
    const fitted = fit(text, (edges[column + 1] ?? widthMm) - x - 1.6, isTitle ? 1.5 : CAP_MM);
    return fitted.text === ''
      ? []
      : [{ kind: 'text', at: { x: x + 0.8, y: baseline }, text: fitted.text, heightMm: fitted.heightMm }];
  };
  return {
    widthMm,
    heightMm,
    items: [
      ...edges.map((x) => line(x, 0, x, heightMm, true)),
      line(0, 0, widthMm, 0, true),
      ...Array.from({ length: rows.length + 1 }, (_, i) =>
        line(0, HEAD_MM + i * rowMm, widthMm, HEAD_MM + i * rowMm, i === 0 || i === rows.length),
      ),
      ...columns.flatMap((c, i) => cell(c.title, i, HEAD_MM - 1.6, true)),
      ...rows.flatMap((row, r) =>
        row.flatMap((text, i) => cell(text, i, HEAD_MM + r * rowMm + rowMm / 2 + CAP_MM / 2, false)),
      ),
    ],
  };
}

function fit(text: string, roomMm: number, heightMm: number): { text: string; heightMm: number } {
  const width = textWidthMm(text, heightMm);
  if (width <= roomMm) return { text, heightMm };
  const smaller = Math.max(1.2, (heightMm * roomMm) / width);
  if (textWidthMm(text, smaller) <= roomMm + 1e-6) return { text, heightMm: smaller };
  // By halves: the designators of a large harness in one box are many thousand characters.
  let [fits, tooLong] = [1, text.length + 1];
  while (tooLong - fits > 1) {
    const middle = (fits + tooLong) >> 1;
    if (textWidthMm(`${text.slice(0, middle)}...`, smaller) > roomMm) tooLong = middle;
    else fits = middle;
  }
  return { text: `${text.slice(0, fits)}...`, heightMm: smaller };
}
