import type { Point } from '../../base/point';
import type { Drawing, DrawingItem } from './drawing';

/** The same picture with every length times a factor, so that one laid out on paper can be told at true size. */
export const scaledDrawing = (drawing: Drawing, factor: number): Drawing => ({
  widthMm: drawing.widthMm * factor,
  heightMm: drawing.heightMm * factor,
  items: drawing.items.map((item) => scaledItem(item, factor)),
});

function scaledItem(item: DrawingItem, f: number): DrawingItem {
  const at = ({ x, y }: Point): Point => ({ x: x * f, y: y * f });
  switch (item.kind) {
    case 'polyline':
    case 'curve':
      return { ...item, points: item.points.map(at) };
    case 'circle':
    case 'arc':
      return { ...item, at: at(item.at), radiusMm: item.radiusMm * f };
    case 'text':
      return { ...item, at: at(item.at), heightMm: item.heightMm * f };
    case 'code':
      return { ...item, at: at(item.at), widthMm: item.widthMm * f, heightMm: item.heightMm * f };
  }
}
