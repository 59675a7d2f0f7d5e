import { drawingBounds } from '../drawing/drawing-bounds';
import type { Drawing, DrawingItem } from '../drawing/drawing';
import { lineItem, moved, textItem } from '../drawing/items';
import { acrossDimension, centreLines, checkBar, downDimension } from './draw-parts';
import type { PanelCut } from './cut-out-sources';

/** The hole at true size, seen from the front of the panel; nothing where its size is not known. */
export function drawPanelCut(cut: PanelCut): Drawing | undefined {
  const { widthMm: w, heightMm: h } = cut;
  if (w === undefined || h === undefined) return undefined;
  const r = Math.min(cut.cornerRadiusMm ?? 0, w / 2, h / 2);
  const radius =
    cut.cornerRadiusMm === undefined ? 'R not stated' : `R ${cut.cornerRadiusMm} at most, 4 corners`;
  return onSheet([
    ...roundedBox(w, h, r),
    ...centreLines({ x: w / 2, y: h / 2 }, w / 2 + 4, h / 2 + 4),
    ...acrossDimension(0, w, h, h + 9, String(w)),
    ...downDimension(0, h, w, w + 9, String(h)),
    lineItem({ x: r * 0.3, y: r * 0.3 }, { x: -6, y: -6 }, { line: 'hair', layer: 'dimensions' }),
    textItem(radius, { x: -6, y: -7 }, 2.2, { layer: 'dimensions' }),
    ...checkBar({ x: 0, y: h + 19 }),
  ]);
}

function roundedBox(w: number, h: number, r: number): DrawingItem[] {
  const style = { line: 'thick', layer: 'outline' } as const;
  const arc = (x: number, y: number, fromDeg: number): DrawingItem => ({
    kind: 'arc', at: { x, y }, radiusMm: r, fromDeg, toDeg: fromDeg + 90, ...style,
  }); // prettier-ignore
  return [
    lineItem({ x: r, y: 0 }, { x: w - r, y: 0 }, style),
    lineItem({ x: w, y: r }, { x: w, y: h - r }, style),
    lineItem({ x: w - r, y: h }, { x: r, y: h }, style),
    lineItem({ x: 0, y: h - r }, { x: 0, y: r }, style),
    ...(r > 0 ? [arc(r, r, 180), arc(w - r, r, 270), arc(w - r, h - r, 0), arc(r, h - r, 90)] : []),
  ];
}

/** Items with a margin around them, the origin at the top left. */
export function onSheet(items: readonly DrawingItem[], marginMm = 2): Drawing {
  const box = drawingBounds({ widthMm: 1, heightMm: 1, items: [...items] });
  if (!box) return { widthMm: 1, heightMm: 1, items: [] };
  return {
    widthMm: box.maxX - box.minX + 2 * marginMm,
    heightMm: box.maxY - box.minY + 2 * marginMm,
    items: items.map((i) => moved(i, marginMm - box.minX, marginMm - box.minY)),
  };
}
