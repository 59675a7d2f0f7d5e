import type { Box } from '@latchwork/core/base/point';
import { TITLE_HEIGHT_MM } from '@latchwork/core/derive/symbol';
import type { Curve } from './curve';

/** The line between two mated symbols: straight where they stand side by side, else a curve between facing sides. */
export function mateCurve(a: Box, b: Box): Curve {
  const [ya, yb] = [bodyMiddle(a), bodyMiddle(b)];
  if (a.maxX <= b.minX || b.maxX <= a.minX) {
    const right = a.maxX <= b.minX;
    const [xa, xb] = right ? [a.maxX, b.minX] : [a.minX, b.maxX];
    // Bodies that overlap in height are joined at the height that they share.
    const low = Math.max(a.minY + TITLE_HEIGHT_MM, b.minY + TITLE_HEIGHT_MM);
    const high = Math.min(a.maxY, b.maxY);
    const [y0, y1] = high > low ? [(low + high) / 2, (low + high) / 2] : [ya, yb];
    const k = (xb - xa) / 2;
    return Float64Array.of(xa, y0, xa + k, y0, xb - k, y1, xb, y1);
  }
  const down = a.maxY <= b.minY;
  const [y0, y1] = down ? [a.maxY, b.minY] : [a.minY, b.maxY];
  const [xa, xb] = [(a.minX + a.maxX) / 2, (b.minX + b.maxX) / 2];
  const k = (y1 - y0) / 2;
  return Float64Array.of(xa, y0, xa, y0 + k, xb, y1 - k, xb, y1);
}

const bodyMiddle = (b: Box): number => (b.minY + TITLE_HEIGHT_MM + b.maxY) / 2;
