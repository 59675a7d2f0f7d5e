import { memoByIdentity } from '../../base/memo-by-identity';
import { boxAround, type Box, type Point } from '../../base/point';
import { arcSpanDeg, onArc } from './arc-span';
import type { Drawing, DrawingItem } from './drawing';
import { lineMmOf } from './stroke-of';
import { textWidthMm } from './text-width';

/** The box around an item with its line, mm. A curve is bounded by its control points; text by the widths of its letters. */
export const itemBounds = memoByIdentity((item: DrawingItem): Box => {
  switch (item.kind) {
    case 'polyline':
    case 'curve':
      return grown(around(item.points), lineMmOf(item) / 2);
    case 'circle':
      return grown(around([item.at]), item.radiusMm + lineMmOf(item) / 2);
    case 'arc': {
      const span = arcSpanDeg(item);
      const turns = [0, 90, 180, 270].filter((deg) => (((deg - item.fromDeg) % 360) + 360) % 360 <= span);
      const points = [item.fromDeg, item.fromDeg + span, ...turns].map((deg) => onArc(item, deg));
      return grown(around(points), lineMmOf(item) / 2);
    }
    case 'code':
      return {
        minX: item.at.x,
        minY: item.at.y,
        maxX: item.at.x + item.widthMm,
        maxY: item.at.y + item.heightMm,
      };
    case 'text':
      return textBounds(item);
  }
});

export const drawingBounds = (drawing: Drawing): Box | null => boxAround(drawing.items.map(itemBounds));

/** A plain loop: it is asked of every item of a drawing. */
function around(points: readonly Point[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

const grown = (b: Box, by: number): Box => ({
  minX: b.minX - by,
  minY: b.minY - by,
  maxX: b.maxX + by,
  maxY: b.maxY + by,
});

/** Descenders and accents reach beyond the height of capitals. */
const BELOW = 0.4;
const ABOVE = 1.35;

function textBounds(item: Extract<DrawingItem, { kind: 'text' }>): Box {
  const width = textWidthMm(item.text, item.heightMm, item.look);
  const left = item.align === 'right' ? -width : item.align === 'middle' ? -width / 2 : 0;
  const angle = ((item.angleDeg ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const corners = [left, left + width].flatMap((x) =>
    [-ABOVE * item.heightMm, BELOW * item.heightMm].map((y) => ({
      x: item.at.x + x * cos - y * sin,
      y: item.at.y + x * sin + y * cos,
    })),
  );
  return around(corners);
}
