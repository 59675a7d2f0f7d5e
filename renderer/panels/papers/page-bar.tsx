import { ChevronDown, ChevronUp, Minus, Plus } from 'lucide-react';
import { Button } from '../../ui/button';
import { useDraftText } from '../../ui/use-draft-text';
import { papersView, type PaperZoom } from './papers-view';
import { stepZoom, zoomPercent } from './zoom';

export interface PageBarProps {
  readonly page: number;
  readonly pages: number;
  readonly zoom: PaperZoom;
  /** What the zoom comes to, times true size. */
  readonly scale: number;
  /** "A4 upright, 210 × 297 mm". */
  readonly sheet: string;
  readonly go: (page: number) => void;
}

/** Which page is shown, how large, and the ways to change that. */
export function PageBar({ page, pages, zoom, scale, sheet, go }: PageBarProps) {
  const setZoom = (to: PaperZoom): void => papersView.setState({ zoom: to });
  const mode = (to: PaperZoom, text: string, title: string) => (
    <Button look="plain" aria-pressed={zoom === to} title={title} onClick={() => setZoom(to)}>
      {text}
    </Button>
  );
  return (
    <div className="page-bar" role="toolbar" aria-label="Pages">
      <Button look="icon" aria-label="Previous page" disabled={page === 0} onClick={() => go(page - 1)}>
        <ChevronUp size={14} aria-hidden />
      </Button>
      <Button look="icon" aria-label="Next page" disabled={page >= pages - 1} onClick={() => go(page + 1)}>
        <ChevronDown size={14} aria-hidden />
      </Button>
      <PageNumber page={page} pages={pages} go={go} />
      <span className="second page-sheet-name">{sheet}</span>
      <span className="page-bar-gap" />
      <Button look="icon" aria-label="Smaller" onClick={() => setZoom(stepZoom(scale, -1))}>
        <Minus size={14} aria-hidden />
      </Button>
      <span className="page-zoom" role="status" aria-label="Size">
        {zoomPercent(scale)}
      </span>
      <Button look="icon" aria-label="Larger" onClick={() => setZoom(stepZoom(scale, 1))}>
        <Plus size={14} aria-hidden />
      </Button>
      {mode('width', 'Width', 'As wide as the window')}
      {mode('page', 'Page', 'Whole pages')}
      {mode(1, '100 %', 'True size, where the screen shows 96 pixels to the inch')}
    </div>
  );
}

function PageNumber({ page, pages, go }: { page: number; pages: number; go: (page: number) => void }) {
  const draft = useDraftText(String(page + 1), (text) => {
    const n = Number(text);
    if (!Number.isInteger(n) || n < 1 || n > pages) return `There are pages 1 to ${pages}.`;
    go(n - 1);
    return null;
  });
  return (
    <span className="page-number">
      <input
        className="input mono"
        aria-label="Page"
        value={draft.text}
        title={draft.problem ?? undefined}
        aria-invalid={draft.problem ? true : undefined}
        onChange={(e) => draft.change(e.target.value)}
        onBlur={draft.finish}
        onKeyDown={draft.onKeyDown}
      />
      <span className="second">of {pages}</span>
    </span>
  );
}
