import type { Paper } from '@latchwork/core/exports/paper/paper';
import { stripsOf, type Strip } from './draw-block';
import type { Fonts } from './fonts';
import { contentBottom, drawFrame, FRAME } from './page-frame';
import { MM, Pen } from './pen';

const INSET = 4 * MM;

/**
 * A paper as PDF: A4 pages with a title block after ISO 7200. The same paper gives the same bytes: the time in the file
 * is the day that the paper speaks of, not the moment of printing.
 */
export function paperPdf(paper: Paper, fonts: Fonts): Promise<Uint8Array> {
  const pen = new Pen(fonts, {
    title: `${paper.title}: ${paper.titleBlock.title}`,
    author: paper.titleBlock.creator,
    subject: `Baseline ${paper.baseline}`,
    made: new Date(`${paper.date}T00:00:00Z`),
  });
  const left = FRAME.left + INSET;
  const right = FRAME.right - INSET;
  const strips = paper.blocks.flatMap((block) => stripsOf(pen, block, left, right));
  let page = -1;
  let y = 0;
  let bottom = 0;
  const turn = (): void => {
    pen.doc.addPage();
    page += 1;
    y = FRAME.top + INSET;
    bottom = contentBottom(pen, paper, page) - 2 * MM;
  };
  turn();
  for (let i = 0; i < strips.length; i++) {
    const strip = strips[i] as Strip;
    if (y + keptHeight(strips, i, bottom - FRAME.top - INSET) > bottom) {
      turn();
      if (strip.head) {
        strip.head.draw(y);
        y += strip.head.height;
      }
    }
    strip.draw(y);
    y += strip.height;
  }
  const pages = page + 1;
  for (let p = 0; p < pages; p++) {
    pen.doc.switchToPage(p);
    drawFrame(pen, paper, p, pages);
  }
  pen.doc.end();
  return pen.bytes;
}

/** Height of a strip and of those that must stay with it; of this one alone where all would not fit on any page. */
function keptHeight(strips: readonly Strip[], from: number, most: number): number {
  let height = 0;
  for (let i = from; i < strips.length; i++) {
    const strip = strips[i] as Strip;
    height += strip.height;
    if (!strip.withNext) break;
  }
  return height > most ? (strips[from] as Strip).height : height;
}
