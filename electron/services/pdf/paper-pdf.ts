import type { Paper, PaperBlock } from '@latchwork/core/exports/paper/paper';
import { type Sheet, sheetMm } from '@latchwork/core/exports/paper/sheet';
import { sheetOfPaper } from '@latchwork/core/exports/paper/sheet-of-paper';
import { type FlowingBlock, stripsOf, type Strip } from './draw-block';
import { drawDrawing } from './draw-drawing';
import type { Fonts } from './fonts';
import { contentBottom, drawFrame, frameOf } from './page-frame';
import { MM, Pen } from './pen';

const INSET = 4 * MM;
const FOOT_GAP = 2 * MM;

interface Page {
  readonly sheet: Sheet;
  readonly picture: boolean;
  readonly bare?: true | undefined;
}

/**
 * A paper as PDF: pages with a title block after ISO 7200. The same paper gives the same bytes: the time in the file is
 * the day that the paper speaks of, not the moment of printing.
 */
export function paperPdf(paper: Paper, fonts: Fonts): Promise<Uint8Array> {
  const pen = new Pen(fonts, {
    title: `${paper.title}: ${paper.titleBlock.title}`,
    author: paper.titleBlock.creator,
    subject: `Baseline ${paper.baseline}`,
    made: new Date(`${paper.date}T00:00:00Z`),
  });
  const pages: Page[] = [];
  const begin = (page: Page): void => {
    const { widthMm, heightMm } = sheetMm(page.sheet);
    pen.doc.addPage({ size: [widthMm * MM, heightMm * MM], margin: 0 });
    pages.push(page);
  };
  for (const part of partsOf(paper.blocks))
    if (part.kind === 'sheet') {
      begin({ sheet: part.sheet, picture: true, bare: part.bare });
      drawLayers(pen, part);
    } else drawFlow(pen, paper, part.blocks, pages, begin);
  if (pages.length === 0) begin({ sheet: sheetOfPaper(paper), picture: false });
  pages.forEach((page, index) => {
    if (page.bare) return;
    pen.doc.switchToPage(index);
    drawFrame(pen, paper, { ...page, index, of: pages.length });
  });
  pen.doc.end();
  return pen.bytes;
}

type SheetBlock = Extract<PaperBlock, { kind: 'sheet' }>;
type Part = SheetBlock | { readonly kind: 'flow'; readonly blocks: readonly FlowingBlock[] };

/** Runs of blocks that flow, and the pages between them. */
function partsOf(blocks: readonly PaperBlock[]): readonly Part[] {
  const parts: Part[] = [];
  let run: FlowingBlock[] = [];
  for (const block of blocks)
    if (block.kind === 'sheet') {
      if (run.length > 0) parts.push({ kind: 'flow', blocks: run });
      run = [];
      parts.push(block);
    } else run.push(block);
  if (run.length > 0) parts.push({ kind: 'flow', blocks: run });
  return parts;
}

function drawLayers(pen: Pen, { layers }: SheetBlock): void {
  for (const { drawing, at, clip } of layers)
    drawDrawing(pen, drawing, {
      x: at.x * MM,
      y: at.y * MM,
      scale: 1,
      clip: clip && { minX: clip.minX * MM, minY: clip.minY * MM, maxX: clip.maxX * MM, maxY: clip.maxY * MM },
    }); // prettier-ignore
}

function drawFlow(
  pen: Pen,
  paper: Paper,
  blocks: readonly FlowingBlock[],
  pages: readonly Page[],
  begin: (page: Page) => void,
): void {
  const sheet = sheetOfPaper(paper);
  const frame = frameOf(sheet);
  const top = frame.minY + INSET;
  const bottomOf = (first: boolean): number => contentBottom(pen, paper, sheet, first) - FOOT_GAP;
  const room = {
    left: frame.minX + INSET,
    right: frame.maxX - INSET,
    height: bottomOf(pages.length === 0) - top,
  };
  const strips = blocks.flatMap((block) => stripsOf(pen, block, room));
  let y = 0;
  let bottom = 0;
  const turn = (): void => {
    begin({ sheet, picture: false });
    y = top;
    bottom = bottomOf(pages.length === 1);
  };
  turn();
  let ends = false;
  for (let i = 0; i < strips.length; i++) {
    const strip = strips[i] as Strip;
    if (strip.ends) {
      ends = y > top;
      continue;
    }
    if (ends || y + keptHeight(strips, i, bottom - top) > bottom) {
      const { head } = strip;
      const goesOn = !ends;
      ends = false;
      turn();
      if (head && goesOn) {
        head.draw(y);
        y += head.height;
      }
    }
    strip.draw(y);
    y += strip.height;
  }
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
