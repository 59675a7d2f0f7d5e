import { assertNever } from '@latchwork/core/base/assert-never';
import { scaleText, scaleThatFits } from '@latchwork/core/exports/drawing/scale';
import type { PaperBlock, PaperText } from '@latchwork/core/exports/paper/paper';
import { drawDrawing } from './draw-drawing';
import { drawMark } from './draw-mark';
import type { Face } from './fonts';
import { HAIR_LINE, INK, leading, MM, type Pen, SECOND_INK, type SetLine, THIN_LINE } from './pen';

/** A strip of the page that is never torn: lines of text that stand side by side, or a rule. */
export interface Strip {
  readonly height: number;
  /** The strip below must be on the same page. */
  readonly withNext?: boolean;
  /** Drawn again on top of a page when the strips that belong to it go on there. */
  readonly head?: Strip;
  /** The page ends here. */
  readonly ends?: true;
  draw(y: number): void;
}

/** Where strips stand, points. */
export interface Room {
  readonly left: number;
  readonly right: number;
  /** Height that is free on any page. */
  readonly height: number;
}

/** Blocks that flow down pages; the others are pages of their own. */
export type FlowingBlock = Exclude<PaperBlock, { kind: 'sheet' }>;

const SIZE = 9;
const SMALL = 8;
const FACE_OF: Readonly<Record<NonNullable<PaperText['look']>, Face>> = {
  strong: 'strong',
  code: 'code',
  second: 'text',
};

/** Cuts a block into strips. */
export function stripsOf(pen: Pen, block: FlowingBlock, room: Room): Strip[] {
  const { left, right } = room;
  const width = right - left;
  switch (block.kind) {
    case 'heading':
      return [
        gap(4 * MM, true),
        ...textStrips(pen, [{ text: block.text, face: 'strong' }], 13, left, width).map(kept),
        gap(1 * MM, true),
      ];
    case 'text':
      return textStrips(
        pen,
        block.text.map((t) => ({ text: t.text, face: t.look ? FACE_OF[t.look] : ('text' as const) })),
        block.text.every((t) => t.look === 'second' || t.look === 'code') ? SMALL : SIZE,
        left,
        width,
      );
    case 'fields':
      return block.rows.flatMap(([label, value]) => fieldStrips(pen, label, value, left, width));
    case 'table':
      return tableStrips(pen, block, left, width);
    case 'matter':
      return matterStrips(pen, block, left, right);
    case 'drawing':
      return drawingStrips(pen, block, room);
    case 'page-break':
      return [{ height: 0, ends: true, draw: () => {} }];
    default:
      return assertNever(block);
  }
}

const gap = (height: number, withNext = false): Strip => ({ height, withNext, draw: () => {} });
const kept = (strip: Strip): Strip => ({ ...strip, withNext: true });

function textStrips(
  pen: Pen,
  runs: readonly { text: string; face: Face }[],
  size: number,
  left: number,
  width: number,
): Strip[] {
  return pen.lines(runs, size, width).map((line) => ({
    height: leading(size),
    draw: (y) => pen.draw(line, left, y, size),
  }));
}

const LABEL_WIDTH = 36 * MM;

function fieldStrips(pen: Pen, label: string, value: string, left: number, width: number): Strip[] {
  const names = pen.lines([{ text: label, face: 'text' }], SIZE, LABEL_WIDTH - 2 * MM);
  const values = pen.lines([{ text: value, face: 'text' }], SIZE, width - LABEL_WIDTH);
  return sideBySide(pen, SIZE, [
    { lines: names, x: left, colour: SECOND_INK },
    { lines: values, x: left + LABEL_WIDTH, colour: INK },
  ]);
}

interface Placed {
  readonly lines: readonly SetLine[];
  readonly x: number;
  readonly colour: string;
  readonly alignTo?: number | undefined;
}

function sideBySide(pen: Pen, size: number, cells: readonly Placed[]): Strip[] {
  const rows = Math.max(1, ...cells.map((c) => c.lines.length));
  return Array.from({ length: rows }, (_, i): Strip => ({
    height: leading(size),
    draw(y) {
      for (const { lines, x, colour, alignTo } of cells) {
        const line = lines[i];
        if (!line) continue;
        const at = alignTo === undefined ? x : alignTo - pen.widthOfLine(line, size);
        pen.draw(line, at, y, size, colour);
      }
    },
  }));
}

type TableBlock = Extract<PaperBlock, { kind: 'table' }>;

function tableStrips(pen: Pen, table: TableBlock, left: number, width: number): Strip[] {
  const shares = table.columns.reduce((sum, c) => sum + c.share, 0);
  const starts: number[] = [];
  table.columns.reduce((x, c) => (starts.push(x), x + (width * c.share) / shares), left);
  const rowOf = (texts: readonly string[], face: Face, colour: string): Strip[] =>
    sideBySide(
      pen,
      SMALL,
      table.columns.map((column, i) => {
        const x = starts[i] as number;
        const inner = (width * column.share) / shares - 3 * MM;
        return {
          lines: pen.lines([{ text: texts[i] ?? '', face }], SMALL, inner),
          x,
          colour,
          alignTo: column.align === 'right' ? x + inner : undefined,
        };
      }),
    );
  const rule = (withNext: boolean, thick: number): Strip => ({
    height: 1.2,
    withNext,
    draw: (y) =>
      void pen.doc.lineWidth(thick).strokeColor(INK).moveTo(left, y).lineTo(left + width, y).stroke(), // prettier-ignore
  });
  const titles = [
    ...rowOf(table.columns.map((c) => c.title), 'text', SECOND_INK).map(kept), // prettier-ignore
    rule(true, HAIR_LINE),
  ];
  const head = stacked(titles);
  const rows = table.rows.flatMap((row) => {
    const strips = rowOf(row, 'text', INK);
    return strips.map((strip, i) => ({ ...strip, head, withNext: i < strips.length - 1 }));
  });
  return [gap(0.8 * MM, true), ...titles, ...rows, gap(0.8 * MM)];
}

function stacked(strips: readonly Strip[]): Strip {
  return {
    height: strips.reduce((sum, s) => sum + s.height, 0),
    withNext: true,
    draw(y) {
      let at = y;
      for (const strip of strips) {
        strip.draw(at);
        at += strip.height;
      }
    },
  };
}

type MatterBlock = Extract<PaperBlock, { kind: 'matter' }>;

/** A thin rule, then mark and name on the left and the state on the right. */
function matterStrips(pen: Pen, matter: MatterBlock, left: number, right: number): Strip[] {
  const size = 10;
  const [name] = pen.lines([{ text: matter.name, face: 'strong' }], size, right - left);
  const [state] = pen.lines([{ text: matter.state, face: 'strong' }], size, right - left);
  return [
    gap(1.6 * MM, true),
    {
      height: leading(size) + 1.6 * MM,
      withNext: true,
      draw(y) {
        pen.doc.lineWidth(THIN_LINE).strokeColor(INK).moveTo(left, y).lineTo(right, y).stroke();
        const top = y + 1.4 * MM;
        if (matter.mark) drawMark(pen.doc, matter.mark, left + 1.8 * MM, top + size * 0.55, 1.7 * MM);
        if (name) pen.draw(name, matter.mark ? left + 5 * MM : left, top, size);
        if (state) pen.draw(state, right - pen.widthOfLine(state, size), top, size);
      },
    },
  ];
}

type DrawingBlock = Extract<PaperBlock, { kind: 'drawing' }>;

/** Room for a heading above a drawing that fills the page. */
const HEADING = 14 * MM;

/** The picture, whole, and under it what it shows and at which scale. Where it is too large it is made smaller, and says so. */
function drawingStrips(pen: Pen, block: DrawingBlock, { left, right, height }: Room): Strip[] {
  const { drawing, caption } = block;
  const width = right - left;
  const wanted = block.scale ?? 1;
  const captionOf = (scale: number) => {
    const smaller = scale === wanted ? '' : `, made smaller to fit the page: not ${scaleText(wanted)}`;
    if (block.form && !smaller)
      return caption ? textStrips(pen, [{ text: caption, face: 'text' }], SMALL, left, width) : [];
    const words = `${caption ? `${caption}, ` : ''}scale ${scaleText(scale)}${smaller}`;
    return textStrips(pen, [{ text: words, face: 'text' }], SMALL, left, width);
  };
  const free = height - HEADING - 4 * leading(SMALL) - 4 * MM;
  const most = Math.min(width / (drawing.widthMm * MM), free / (drawing.heightMm * MM));
  const scale = scaleThatFits(wanted, most);
  return [
    gap(1.5 * MM, true),
    {
      height: drawing.heightMm * MM * scale,
      withNext: true,
      draw: (y) => drawDrawing(pen, drawing, { x: left, y, scale }),
    },
    gap(1 * MM, true),
    ...captionOf(scale).map((strip, i, all) => (i < all.length - 1 ? kept(strip) : strip)),
    gap(1.5 * MM),
  ];
}
