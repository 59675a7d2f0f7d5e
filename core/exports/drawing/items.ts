import type { Box, Point } from '../../base/point';
import type { DrawingItem } from './drawing';

type Polyline = Extract<DrawingItem, { kind: 'polyline' }>;
type Style = Omit<Polyline, 'kind' | 'points' | 'closed'>;
type Text = Extract<DrawingItem, { kind: 'text' }>;

export const lineItem = (from: Point, to: Point, style: Style = {}): DrawingItem => ({
  kind: 'polyline',
  points: [from, to],
  ...style,
});

export const boxItem = ({ minX, minY, maxX, maxY }: Box, style: Style = {}): DrawingItem => ({
  kind: 'polyline',
  points: [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ],
  closed: true,
  ...style,
});

export const textItem = (
  text: string,
  at: Point,
  heightMm: number,
  more: Omit<Text, 'kind' | 'text' | 'at' | 'heightMm'> = {},
): Text => ({ kind: 'text', at, text, heightMm, ...more });

/** The same item elsewhere. */
export function moved(item: DrawingItem, dx: number, dy: number): DrawingItem {
  const shift = (p: Point): Point => ({ x: p.x + dx, y: p.y + dy });
  return item.kind === 'polyline' || item.kind === 'curve'
    ? { ...item, points: item.points.map(shift) }
    : { ...item, at: shift(item.at) };
}
