import { useEffect, useRef, useState } from 'react';
import { drawPage, pixelsPerPoint, textOfPage } from './page-bitmap';
import type { PdfFile } from './pdf-file';

export interface PageCanvasProps {
  readonly pdf: PdfFile;
  readonly index: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** One page, drawn while it is in view. What it shows stays until it is drawn anew at another size. */
export function PageCanvas({ pdf, index, widthPx, heightPx }: PageCanvasProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [isDrawn, setDrawn] = useState(false);
  const [text, setText] = useState('');
  const size = pdf.pages[index];
  const wanted = size ? (widthPx / size.widthPt) * devicePixelRatio : 1;
  useEffect(() => {
    const stop = new AbortController();
    drawPage(pdf, index, pixelsPerPoint(pdf, index, wanted), stop.signal)
      .then(async (drawn) => {
        const shown = canvas.current;
        if (!shown) return;
        shown.width = drawn.width;
        shown.height = drawn.height;
        shown.getContext('2d')?.drawImage(drawn, 0, 0);
        setDrawn(true);
        const words = await textOfPage(pdf, index);
        if (!stop.signal.aborted) setText(words);
      })
      .catch((error: unknown) => {
        if (!stop.signal.aborted) setProblem(error instanceof Error ? error.message : String(error));
      });
    return () => stop.abort();
  }, [pdf, index, wanted]);
  return (
    <figure
      className="page-sheet"
      aria-label={`Page ${index + 1} of ${pdf.pages.length}`}
      data-drawn={isDrawn ? '' : undefined}
      style={{ width: widthPx, height: heightPx }}
    >
      <canvas ref={canvas} aria-hidden />
      {problem ? (
        <p className="page-problem" role="alert">
          This page cannot be shown: {problem}. Its file is not touched by that: export it.
        </p>
      ) : null}
      <div className="visually-hidden">{text}</div>
    </figure>
  );
}
