import type { PaperZoom } from './papers-view';
import type { PdfFile } from './pdf-file';

/** CSS pixels for a point of 1/72 inch at true size: CSS has 96 to the inch. */
export const PX_PER_PT = 96 / 72;

/** Room around the pages, pixels. */
export const PAGE_GAP_PX = 16;

const STEPS = [0.1, 0.25, 0.33, 0.5, 0.67, 0.75, 1, 1.25, 1.5, 2, 3, 4] as const;

/** The next size up or down from where one is. */
export const stepZoom = (scale: number, by: 1 | -1): number =>
  (by > 0 ? STEPS.find((s) => s > scale * 1.01) : STEPS.findLast((s) => s < scale * 0.99)) ??
  (by > 0 ? 4 : 0.1);

export const zoomPercent = (scale: number): string => `${Math.round(scale * 100)} %`;

/** Times true size. Fitted to the widest page, and in whole pages also to the highest. */
export function scaleOf(zoom: PaperZoom, pdf: PdfFile, place: { width: number; height: number }): number {
  if (typeof zoom === 'number') return zoom;
  const room = (px: number): number => Math.max(80, px - 2 * PAGE_GAP_PX);
  const width = Math.max(...pdf.pages.map((p) => p.widthPt), 1) * PX_PER_PT;
  const byWidth = room(place.width) / width;
  if (zoom === 'width') return Math.min(4, byWidth);
  const height = Math.max(...pdf.pages.map((p) => p.heightPt), 1) * PX_PER_PT;
  return Math.min(4, byWidth, room(place.height) / height);
}
