import type { DrawingItem } from './drawing';

export type CodeItem = Extract<DrawingItem, { kind: 'code' }>;

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The dark fields of a code in modules, its quiet zone included in the size. */
export interface CodeModules {
  readonly columns: number;
  readonly rows: number;
  readonly dark: readonly Rectangle[];
}

/** Encodes a text; null where the symbology cannot say it. The encoder is the work of others. */
export type ModulesOf = (symbology: CodeItem['symbology'], text: string) => CodeModules | null;

/** Quiet zones in modules: 10 beside a Code 128 (ISO/IEC 15417), 4 around a QR code (ISO/IEC 18004). */
const QUIET = { 'code-128': 10, 'qr': 4 } as const; // prettier-ignore

/** From the widths of bars and spaces in turn, the first a bar. */
export function barModules(widths: readonly number[]): CodeModules {
  const dark: Rectangle[] = [];
  let x: number = QUIET['code-128'];
  widths.forEach((width, i) => {
    if (i % 2 === 0) dark.push({ x, y: 0, width, height: 1 });
    x += width;
  });
  return { columns: x + QUIET['code-128'], rows: 1, dark };
}

/** From the fields of a square, row by row, 1 for dark. Fields that stand side by side become one. */
export function fieldModules(fields: readonly number[], side: number): CodeModules {
  const dark: Rectangle[] = [];
  for (let row = 0; row < side; row++)
    for (let column = 0; column < side;) {
      let end = column;
      while (end < side && fields[row * side + end] === 1) end++;
      if (end > column)
        dark.push({ x: column + QUIET.qr, y: row + QUIET.qr, width: end - column, height: 1 });
      column = Math.max(end, column + 1);
    }
  return { columns: side + 2 * QUIET.qr, rows: side + 2 * QUIET.qr, dark };
}

/** The dark fields of a code in its box, mm. Bars fill the height; a square stands in the middle of its box. */
export function codeRectangles(item: CodeItem, code: CodeModules): readonly Rectangle[] {
  const across = item.widthMm / code.columns;
  const down = item.heightMm / code.rows;
  const [w, h] = item.symbology === 'qr' ? [Math.min(across, down), Math.min(across, down)] : [across, down];
  const left = item.at.x + (item.widthMm - w * code.columns) / 2;
  const top = item.at.y + (item.heightMm - h * code.rows) / 2;
  return code.dark.map((d) => ({
    x: left + d.x * w,
    y: top + d.y * h,
    width: d.width * w,
    height: d.height * h,
  }));
}
