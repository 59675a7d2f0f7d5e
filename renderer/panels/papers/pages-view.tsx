import { useVirtualizer } from '@tanstack/react-virtual';
import { type KeyboardEvent, useLayoutEffect, useRef, useState } from 'react';
import { PageBar } from './page-bar';
import { PageCanvas } from './page-canvas';
import type { PdfFile } from './pdf-file';
import { papersView, usePapersView } from './papers-view';
import { sheetWords } from './sheet-name';
import { PAGE_GAP_PX, PX_PER_PT, scaleOf, stepZoom } from './zoom';

/** The pages of a PDF file below each other; only those in view are drawn. */
export function PagesView({ pdf, title }: { pdf: PdfFile; title: string }) {
  const scroller = useRef<HTMLDivElement>(null);
  const place = usePlace(scroller);
  const zoom = usePapersView((v) => v.zoom);
  const scale = scaleOf(zoom, pdf, place);
  const px = (pt: number): number => Math.round(pt * PX_PER_PT * scale);
  const pages = pdf.pages.length;
  const virtual = useVirtualizer({
    count: pages,
    getScrollElement: () => scroller.current,
    estimateSize: (i) => px(pdf.pages[i]?.heightPt ?? 0),
    gap: PAGE_GAP_PX,
    paddingStart: PAGE_GAP_PX,
    scrollPaddingStart: PAGE_GAP_PX,
    paddingEnd: PAGE_GAP_PX,
    overscan: 1,
  });
  const page = pageAt(virtual.scrollOffset ?? 0, place.height, virtual.measurementsCache);

  const go = (to: number): void => {
    virtual.scrollToIndex(Math.max(0, Math.min(pages - 1, to)), { align: 'start' });
  };
  /** From the page that is in view now, which the last drawing may not know yet: keys come fast. */
  const turn = (by: number): void => {
    const { current } = scroller;
    go(pageAt(current?.scrollTop ?? 0, current?.clientHeight ?? 0, virtual.measurementsCache) + by);
  };
  // At another size the same part of the pages stays in view.
  const before = useRef(scale);
  useLayoutEffect(() => {
    const factor = scale / before.current;
    before.current = scale;
    virtual.measure();
    if (factor === 1) return;
    const frame = requestAnimationFrame(() => {
      const { current } = scroller;
      current?.scrollTo({ top: current.scrollTop * factor });
    });
    return () => cancelAnimationFrame(frame);
  }, [scale, virtual]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const { current } = scroller;
    const sideways = current !== null && current.scrollWidth > current.clientWidth;
    const moves: Record<string, () => void> = {
      PageDown: () => turn(1),
      PageUp: () => turn(-1),
      Home: () => go(0),
      End: () => go(pages - 1),
      '+': () => papersView.setState({ zoom: stepZoom(scale, 1) }),
      '-': () => papersView.setState({ zoom: stepZoom(scale, -1) }),
      '0': () => papersView.setState({ zoom: 'width' }),
      '1': () => papersView.setState({ zoom: 1 }),
      ...(sideways ? {} : { ArrowRight: () => turn(1), ArrowLeft: () => turn(-1) }),
    };
    const move = event.ctrlKey || event.metaKey || event.altKey ? undefined : moves[event.key];
    if (!move) return;
    event.preventDefault();
    move();
  };
  const width = Math.max(...pdf.pages.map((p) => px(p.widthPt)), 0) + 2 * PAGE_GAP_PX;
  const shown = pdf.pages[page];

  return (
    <>
      <PageBar
        page={page}
        pages={pages}
        zoom={zoom}
        scale={scale}
        sheet={shown ? sheetWords(shown) : ''}
        go={go}
      />
      {/* Scrolled by keys, so it must take the focus. */}
      <div
        ref={scroller}
        className="pages"
        role="group"
        aria-label={`Pages of ${title.toLowerCase()}`}
        tabIndex={0}
        onKeyDown={onKeyDown}
      >
        <div className="pages-roll" style={{ height: virtual.getTotalSize(), minWidth: width }}>
          {virtual.getVirtualItems().map((item) => {
            const size = pdf.pages[item.index];
            return size ? (
              <div key={item.key} className="page-place" style={{ transform: `translateY(${item.start}px)` }}>
                <PageCanvas
                  pdf={pdf}
                  index={item.index}
                  widthPx={px(size.widthPt)}
                  heightPx={px(size.heightPt)}
                />
              </div>
            ) : null;
          })}
        </div>
      </div>
    </>
  );
}

/** The page that stands at a third of the height of the place. */
function pageAt(
  offset: number,
  height: number,
  pages: readonly { readonly index: number; readonly end: number }[],
): number {
  const line = offset + height / 3;
  return (pages.find((p) => p.end + PAGE_GAP_PX > line) ?? pages.at(-1))?.index ?? 0;
}

function usePlace(element: { readonly current: HTMLElement | null }): { width: number; height: number } {
  const [place, setPlace] = useState({ width: 800, height: 600 });
  useLayoutEffect(() => {
    const { current } = element;
    if (!current) return;
    const measure = (): void => setPlace({ width: current.clientWidth, height: current.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return place;
}
