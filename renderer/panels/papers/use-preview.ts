import { useEffect, useState } from 'react';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import type { Paper } from '@latchwork/core/exports/paper/paper';
import { drawPaper } from './draw-paper';
import { openPdf, type PdfFile } from './pdf-file';
import { tellState } from './use-survey';

export type Preview =
  | { readonly status: 'drawing' }
  | { readonly status: 'failed'; readonly reason: string }
  | { readonly status: 'shown'; readonly paper: Paper; readonly pdf: PdfFile };

interface Made {
  readonly exporter: Exporter;
  readonly input: DocumentInput;
  readonly preview: Preview;
}

/** Several choices one after the other, as with an arrow key held down, are waited for. */
const SETTLE_MS = 80;

/** The pages of a document as it is now. Another choice or another project ends what is still being drawn. */
export function usePreview(exporter: Exporter, input: DocumentInput): Preview {
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => {
    const stop = new AbortController();
    let open: PdfFile | null = null;
    const settled = (preview: Preview): void => setMade({ exporter, input, preview });
    const draw = async (): Promise<void> => {
      const answer = await drawPaper(exporter, input, stop.signal);
      if (answer.status === 'failed') return settled(answer);
      const pdf = await openPdf(answer.drawn.bytes);
      if (stop.signal.aborted) return pdf.close();
      open = pdf;
      tellState(exporter.id, { pages: pdf.pages.length });
      settled({ status: 'shown', paper: answer.drawn.paper, pdf });
    };
    const timer = setTimeout(() => {
      draw().catch((error: unknown) => {
        if (!stop.signal.aborted)
          settled({ status: 'failed', reason: error instanceof Error ? error.message : String(error) });
      });
    }, SETTLE_MS);
    return () => {
      clearTimeout(timer);
      stop.abort();
      open?.close();
    };
  }, [exporter, input]);
  return made?.exporter === exporter && made.input === input ? made.preview : { status: 'drawing' };
}
