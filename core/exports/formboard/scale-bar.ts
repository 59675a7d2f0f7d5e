import type { Point } from '../../base/point';
import type { DrawingItem } from '../drawing/drawing';
import { lineItem, textItem } from '../drawing/items';

export const BAR_MM = 100;
const TICK_MM = 2;
const TEXT_MM = 1.8;

/** A bar of 100 mm with a tick every 10, to be held against a ruler. Ticks stand above it, or left of it; its name on the other side. */
export function scaleBar(start: Point, direction: 'across' | 'down', layer = 'scale'): DrawingItem[] {
  const at = (mm: number, off: number): Point =>
    direction === 'across' ? { x: start.x + mm, y: start.y - off } : { x: start.x - off, y: start.y + mm };
  const ticks = Array.from({ length: BAR_MM / 10 + 1 }, (_, i) => i * 10);
  return [
    lineItem(at(0, 0), at(BAR_MM, 0), { line: 'thick', layer }),
    ...ticks.map((mm) =>
      lineItem(at(mm, 0), at(mm, mm % 50 === 0 ? TICK_MM : TICK_MM / 2), { line: 'thin', layer }),
    ),
    textItem('100 mm', at(75, -TEXT_MM - 0.5), TEXT_MM, {
      align: 'middle',
      layer,
      ...(direction === 'down' ? { angleDeg: -90 } : {}),
    }),
  ];
}
