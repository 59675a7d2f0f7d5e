import type { MarkKind } from '@latchwork/core/exports/paper/paper-mark';
import { INK } from './pen';

/** The mark of a finding around (x, y): a shape of its own for each, so that a grey print tells them apart. */
export function drawMark(
  doc: PDFKit.PDFDocument,
  kind: MarkKind,
  x: number,
  y: number,
  radius: number,
): void {
  const polygon = (corners: number, turn: number, r = radius): void => {
    const points = Array.from({ length: corners }, (_, i): [number, number] => {
      const angle = turn + (2 * Math.PI * i) / corners;
      return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
    });
    doc.polygon(...points);
  };
  doc.fillColor(INK).strokeColor(INK).lineWidth(0.8);
  switch (kind) {
    case 'critical':
      polygon(8, Math.PI / 8);
      doc.fill();
      break;
    case 'major':
      polygon(3, -Math.PI / 2, radius * 1.1);
      doc.fill();
      break;
    case 'minor':
      polygon(4, 0);
      doc.stroke();
      break;
    case 'note':
      doc.circle(x, y, radius * 0.5).fill();
      break;
    case 'unknown':
      doc.circle(x, y, radius).stroke();
      doc
        .font('strong')
        .fontSize(radius * 1.7)
        .text('?', x - doc.widthOfString('?') / 2, y - radius * 1.02, { lineBreak: false });
      break;
  }
}
