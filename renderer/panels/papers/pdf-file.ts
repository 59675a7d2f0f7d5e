import type { PDFDocumentProxy, PDFPageProxy, PDFWorker } from 'pdfjs-dist';
import type * as Pdf from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfFile {
  /** Sizes of the pages in points of 1/72 inch. */
  readonly pages: readonly { readonly widthPt: number; readonly heightPt: number }[];
  page(index: number): Promise<PDFPageProxy>;
  close(): void;
}

type Library = typeof Pdf;
let loaded: Promise<{ library: Library; worker: PDFWorker }> | null = null;

/** The reader of PDF files and its thread, fetched when the first pages are shown. */
const reader = (): NonNullable<typeof loaded> =>
  (loaded ??= import('pdfjs-dist/legacy/build/pdf.mjs').then((library) => {
    const port = new Worker(new URL('./pdf-worker.ts', import.meta.url), { type: 'module' });
    return { library, worker: library.PDFWorker.create({ port }) };
  }));

/**
 * A PDF file to be drawn. Nothing that the content policy of the window refuses is used: glyphs are drawn as paths, no font is
 * put into the page, no text is run as code. Throws where the bytes are no PDF.
 */
export async function openPdf(bytes: Uint8Array): Promise<PdfFile> {
  const { library, worker } = await reader();
  const task = library.getDocument({
    // The thread takes what it is given away from here.
    data: bytes.slice(),
    worker,
    isEvalSupported: false,
    disableFontFace: true,
    useWasm: false,
    useWorkerFetch: false,
    enableXfa: false,
    verbosity: library.VerbosityLevel.ERRORS,
  });
  const file: PDFDocumentProxy = await task.promise;
  const proxies = await Promise.all(Array.from({ length: file.numPages }, (_, i) => file.getPage(i + 1)));
  return {
    pages: proxies.map((p) => {
      const { width, height } = p.getViewport({ scale: 1 });
      return { widthPt: width, heightPt: height };
    }),
    page: (index) => file.getPage(index + 1),
    close: () => void task.destroy(),
  };
}
