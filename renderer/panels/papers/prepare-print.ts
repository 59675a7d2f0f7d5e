import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { drawPaper } from './draw-paper';
import { isTrueSize } from './is-true-size';
import { drawPage, pixelsPerPoint } from './page-bitmap';
import { openPdf } from './pdf-file';
import type { PrintSheet } from './print-store';
import { sheetOfPage } from './sheet-name';

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

/** Dots per inch of the pictures: what common printers have, and codes for readers stay sharp. */
const DOTS_PER_PT = 300 / 72;

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
          const canvas = await drawPage(pdf, index, pixelsPerPoint(pdf, index, DOTS_PER_PT), signal);
          sheets.push({ url: URL.createObjectURL(await pngOf(canvas)), sheet: sheetOfPage(page) });
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

const pngOf = (canvas: HTMLCanvasElement): Promise<Blob> =>
  new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('A page is too large for a picture')))),
  );
