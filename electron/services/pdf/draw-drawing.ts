import type { Box, Point } from '@latchwork/core/base/point';
import { arcSpanDeg, onArc } from '@latchwork/core/exports/drawing/arc-span';
import { codeRectangles, type CodeItem } from '@latchwork/core/exports/drawing/code-modules';
import type { Drawing, DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import { uncodedText } from '@latchwork/core/exports/drawing/uncoded-text';
import { DASH_MM, FILL_COLOURS, lineMmOf, lineOf } from '@latchwork/core/exports/drawing/stroke-of';
import { CAPITALS } from '@latchwork/core/exports/drawing/text-width';
import { modulesOf } from '../modules-of';
import { INK, MM, type Pen } from './pen';

export interface Placing {
  /** Of the origin of the drawing on the page, points. */
  readonly x: number;
  readonly y: number;
  /** Paper size over true size. Lines keep their widths. */
  readonly scale: number;
  /** In the coordinates of the page, points. */
  readonly clip?: Box | undefined;
}

/** Draws a drawing as lines and letters: nothing of it is a bitmap. */
export function drawDrawing(pen: Pen, drawing: Drawing, { x, y, scale, clip }: Placing): void {
  const { doc } = pen;
  doc.save();
  if (clip) doc.rect(clip.minX, clip.minY, clip.maxX - clip.minX, clip.maxY - clip.minY).clip();
  doc.translate(x, y);
  doc.scale(MM * scale, MM * scale);
  doc.lineCap('butt').lineJoin('round');
  for (const item of drawing.items)
    if (item.kind === 'text') drawText(pen, item);
    else if (item.kind === 'code') drawCode(pen, item);
    else drawFigure(doc, item, scale);
  doc.restore();
}

type Figure = Exclude<DrawingItem, { kind: 'text' | 'code' }>;

function drawFigure(doc: PDFKit.PDFDocument, item: Figure, scale: number): void {
  const line = lineOf(item);
  if (line === null && !item.fill) return;
  if (line !== null) {
    doc.lineWidth(lineMmOf(item) / scale).strokeColor(INK);
    // A pattern of several lengths, which the types leave out.
    if (item.dash) doc.dash(DASH_MM[item.dash].map((mm) => mm / scale) as unknown as number, {});
    else doc.undash();
  }
  if (item.fill) doc.fillColor(FILL_COLOURS[item.fill]);
  trace(doc, item);
  if (line !== null && item.fill) doc.fillAndStroke();
  else if (item.fill) doc.fill();
  else doc.stroke();
}

function trace(doc: PDFKit.PDFDocument, item: Figure): void {
  switch (item.kind) {
    case 'polyline': {
      const [first, ...rest] = item.points as [Point, ...Point[]];
      doc.moveTo(first.x, first.y);
      for (const p of rest) doc.lineTo(p.x, p.y);
      if (item.closed) doc.closePath();
      return;
    }
    case 'curve': {
      const [first] = item.points as [Point];
      doc.moveTo(first.x, first.y);
      for (let i = 1; i + 2 < item.points.length; i += 3) {
        const [a, b, c] = item.points.slice(i, i + 3) as [Point, Point, Point];
        doc.bezierCurveTo(a.x, a.y, b.x, b.y, c.x, c.y);
      }
      return;
    }
    case 'circle':
      doc.circle(item.at.x, item.at.y, item.radiusMm);
      return;
    case 'arc': {
      const span = arcSpanDeg(item);
      if (span === 360) {
        doc.circle(item.at.x, item.at.y, item.radiusMm);
        return;
      }
      const start = onArc(item, item.fromDeg);
      doc.moveTo(start.x, start.y);
      // Quarter by quarter, by the usual cubic: within 0.03 % of the radius.
      const parts = Math.max(1, Math.ceil(span / 90));
      const step = ((span / parts) * Math.PI) / 180;
      const reach = (4 / 3) * Math.tan(step / 4) * item.radiusMm;
      for (let i = 0; i < parts; i++) {
        const a = (item.fromDeg * Math.PI) / 180 + i * step;
        const b = a + step;
        const from = onArc(item, (a * 180) / Math.PI);
        const to = onArc(item, (b * 180) / Math.PI);
        doc.bezierCurveTo(
          from.x - reach * Math.sin(a), from.y + reach * Math.cos(a),
          to.x + reach * Math.sin(b), to.y - reach * Math.cos(b), to.x, to.y,
        ); // prettier-ignore
      }
      return;
    }
  }
}

function drawText(pen: Pen, item: Extract<DrawingItem, { kind: 'text' }>): void {
  const { doc } = pen;
  const size = item.heightMm / CAPITALS;
  const [line] = pen.lines([{ text: item.text, face: item.look ?? 'text' }], size, Infinity);
  if (!line) return;
  const width = pen.widthOfLine(line, size);
  const left = item.align === 'right' ? -width : item.align === 'middle' ? -width / 2 : 0;
  doc.save();
  doc.translate(item.at.x, item.at.y);
  if (item.angleDeg) doc.rotate(item.angleDeg);
  doc.fillColor(INK);
  for (const piece of line)
    doc
      .font(piece.face)
      .fontSize(size)
      .text(piece.text, left + piece.x, 0, { lineBreak: false, baseline: 'alphabetic' });
  doc.restore();
}

/** What cannot be coded is framed and written instead: a label without its code must be seen. */
function drawCode(pen: Pen, item: CodeItem): void {
  const { doc } = pen;
  const code = modulesOf(item.symbology, item.text);
  if (code) {
    for (const r of codeRectangles(item, code)) doc.rect(r.x, r.y, r.width, r.height);
    doc.fillColor(INK).fill();
    return;
  }
  doc.undash().lineWidth(0.13).strokeColor(INK);
  doc.rect(item.at.x, item.at.y, item.widthMm, item.heightMm).stroke();
  drawText(pen, uncodedText(item));
}
