import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { drawPaper } from './draw-paper';
import { isTrueSize } from './is-true-size';
import { drawPage, pixelsPerPoint } from './page-bitmap';
import { openPdf } from './pdf-file';
import type { PrintSheet } from './print-store';
import { sheetOfPage } from './sheet-name';
import { PX_PER_PT } from './zoom';

export interface PrintJob {
  readonly sheets: readonly PrintSheet[];
  /** Documents with drawings that one measures on. */
  readonly trueSize: readonly string[];
  readonly problems: readonly { readonly what: string; readonly reason: string }[];
}

export interface PrintProgress {
  readonly making: string;
  readonly done: number;
  readonly total: number;
}

/** Of CSS, 96 to the inch. A picture that does not end on whole pixels is stretched until it does, and is no longer true. */
const GRID_PX = 8;
/** 25 dots to 8 pixels are 300 to the inch: what common printers have, and codes for readers stay sharp. */
const DOTS_PER_GRID = 25;

/** Draws documents page by page as pictures for the printer. With the signal it stops and leaves nothing. */
export async function preparePrint(
  documents: readonly { readonly exporter: Exporter; readonly input: DocumentInput }[],
  tell: (progress: PrintProgress) => void,
  signal: AbortSignal,
): Promise<PrintJob> {
  const sheets: PrintSheet[] = [];
  const trueSize: string[] = [];
  const problems: { what: string; reason: string }[] = [];
  try {
    for (const [done, { exporter, input }] of documents.entries()) {
      tell({ making: exporter.title, done, total: documents.length });
      const answer = await drawPaper(exporter, input, signal);
      if (answer.status === 'failed') {
        problems.push({ what: exporter.title, reason: answer.reason });
        continue;
      }
      if (isTrueSize(answer.drawn.paper)) trueSize.push(exporter.title);
      const pdf = await openPdf(answer.drawn.bytes);
      try {
        for (const [index, page] of pdf.pages.entries()) {
          const part = index / pdf.pages.length;
          tell({
            making: `${exporter.title}, page ${index + 1} of ${pdf.pages.length}`,
            done: done + part,
            total: documents.length,
          });
          const most = pixelsPerPoint(pdf, index, (DOTS_PER_GRID / GRID_PX) * PX_PER_PT);
          const dots = Math.max(1, Math.floor((most / PX_PER_PT) * GRID_PX + 1e-6));
          const drawn = await drawPage(pdf, index, (dots / GRID_PX) * PX_PER_PT, signal);
          const canvas = onGrid(drawn, dots);
          sheets.push({
            url: URL.createObjectURL(await pngOf(canvas)),
            sheet: sheetOfPage(page),
            widthPx: (canvas.width / dots) * GRID_PX,
            heightPx: (canvas.height / dots) * GRID_PX,
          });
          signal.throwIfAborted();
        }
      } finally {
        pdf.close();
      }
    }
    return { sheets, trueSize, problems };
  } catch (error) {
    for (const { url } of sheets) URL.revokeObjectURL(url);
    throw error;
  }
}

/** The same picture with room to the right and below, so that it ends on the grid. */
function onGrid(drawn: HTMLCanvasElement, dots: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(drawn.width / dots) * dots;
  canvas.height = Math.ceil(drawn.height / dots) * dots;
  canvas.getContext('2d')?.drawImage(drawn, 0, 0);
  return canvas;
}

const pngOf = (canvas: HTMLCanvasElement): Promise<Blob> =>
  new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('A page is too large for a picture')))),
  );
