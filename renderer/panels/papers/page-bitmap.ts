import type { PdfFile } from './pdf-file';

/** A canvas of more is refused by some machines, and takes 4 bytes of memory for each. */
const MAX_PIXELS = 32_000_000;

/** Pixels per point, no more than a canvas can have. */
export function pixelsPerPoint(pdf: PdfFile, index: number, wanted: number): number {
  const page = pdf.pages[index];
  return page ? Math.min(wanted, Math.sqrt(MAX_PIXELS / (page.widthPt * page.heightPt))) : wanted;
}

/** Draws a page into a new canvas. With the signal it stops and throws the reason of the signal. */
export async function drawPage(
  pdf: PdfFile,
  index: number,
  scale: number,
  signal: AbortSignal,
): Promise<HTMLCanvasElement> {
  const page = await pdf.page(index);
  signal.throwIfAborted();
  const viewport = page.getViewport({ scale });
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(viewport.width));
  canvas.height = Math.max(1, Math.round(viewport.height));
  const task = page.render({ canvas, viewport });
  const stop = (): void => task.cancel();
  signal.addEventListener('abort', stop);
  try {
    await task.promise;
  } catch (error) {
    signal.throwIfAborted();
    throw error;
  } finally {
    signal.removeEventListener('abort', stop);
  }
  return canvas;
}

/** What is written on a page, for those who cannot see it. */
export async function textOfPage(pdf: PdfFile, index: number): Promise<string> {
  const { items } = await (await pdf.page(index)).getTextContent();
  return items.map((i) => ('str' in i ? i.str : '')).join(' ').replace(/\s+/g, ' ').trim(); // prettier-ignore
}
