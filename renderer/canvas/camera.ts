import type { Box, Point } from '@latchwork/core/base/point';
import type { Camera } from '../app/view';

export interface SizePx {
  readonly width: number;
  readonly height: number;
}

export const LEAST_PX_PER_MM = 0.08;
export const MOST_PX_PER_MM = 24;

export const toSheet = (c: Camera, screen: Point): Point => ({
  x: c.x + screen.x / c.pxPerMm,
  y: c.y + screen.y / c.pxPerMm,
});

export const toScreen = (c: Camera, sheet: Point): Point => ({
  x: (sheet.x - c.x) * c.pxPerMm,
  y: (sheet.y - c.y) * c.pxPerMm,
});

/** The sheet follows a drag of so many pixels. */
export const panned = (c: Camera, by: Point): Camera => ({
  ...c,
  x: c.x - by.x / c.pxPerMm,
  y: c.y - by.y / c.pxPerMm,
});

/** Zooms by a factor; the sheet point under `at` (pixels) stays where it is. */
export function zoomedAt(c: Camera, at: Point, factor: number): Camera {
  const pxPerMm = Math.min(MOST_PX_PER_MM, Math.max(LEAST_PX_PER_MM, c.pxPerMm * factor));
  return {
    x: c.x + at.x / c.pxPerMm - at.x / pxPerMm,
    y: c.y + at.y / c.pxPerMm - at.y / pxPerMm,
    pxPerMm,
  };
}

/** Shows the whole box with a margin, no nearer than `most`. */
export function fitted(box: Box, size: SizePx, most = 6, marginPx = 48): Camera {
  const w = Math.max(1, box.maxX - box.minX);
  const h = Math.max(1, box.maxY - box.minY);
  const room = { w: Math.max(40, size.width - 2 * marginPx), h: Math.max(40, size.height - 2 * marginPx) };
  const pxPerMm = Math.min(most, Math.max(LEAST_PX_PER_MM, Math.min(room.w / w, room.h / h)));
  return {
    x: (box.minX + box.maxX) / 2 - size.width / 2 / pxPerMm,
    y: (box.minY + box.maxY) / 2 - size.height / 2 / pxPerMm,
    pxPerMm,
  };
}

/** The part of the sheet that is in view. */
export const viewBox = (c: Camera, size: SizePx): Box => ({
  minX: c.x,
  minY: c.y,
  maxX: c.x + size.width / c.pxPerMm,
  maxY: c.y + size.height / c.pxPerMm,
});
