import type { Point } from '../../base/point';
import type { DrawingItem } from '../drawing/drawing';
import { lineItem, textItem } from '../drawing/items';
import { textWidthMm } from '../drawing/text-width';

const DIMENSIONS = 'dimensions';
const TEXT_MM = 2.2;
const ARROW_MM = 2.2;

/** A length across, below or above what it measures, with its number on the line. */
export function acrossDimension(
  x0: number,
  x1: number,
  fromY: number,
  lineY: number,
  text: string,
): DrawingItem[] {
  const outside = x1 - x0 < 3 * ARROW_MM;
  return [
    ...extension({ x: x0, y: fromY }, { x: x0, y: lineY }),
    ...extension({ x: x1, y: fromY }, { x: x1, y: lineY }),
    hair({ x: outside ? x0 - 4 : x0, y: lineY }, { x: outside ? x1 + 4 : x1, y: lineY }),
    arrow({ x: x0, y: lineY }, outside ? -1 : 1, 0),
    arrow({ x: x1, y: lineY }, outside ? 1 : -1, 0),
    outside || textWidthMm(text, TEXT_MM) + 2 > x1 - x0
      ? textItem(text, { x: x1 + 5, y: lineY + TEXT_MM / 2 }, TEXT_MM, { layer: DIMENSIONS })
      : textItem(text, { x: (x0 + x1) / 2, y: lineY - 0.8 }, TEXT_MM, { align: 'middle', layer: DIMENSIONS }),
  ];
}

/** A length down, at the side of what it measures. */
export function downDimension(
  y0: number,
  y1: number,
  fromX: number,
  lineX: number,
  text: string,
): DrawingItem[] {
  const outside = y1 - y0 < 3 * ARROW_MM;
  return [
    ...extension({ x: fromX, y: y0 }, { x: lineX, y: y0 }),
    ...extension({ x: fromX, y: y1 }, { x: lineX, y: y1 }),
    hair({ x: lineX, y: outside ? y0 - 4 : y0 }, { x: lineX, y: outside ? y1 + 4 : y1 }),
    arrow({ x: lineX, y: y0 }, 0, outside ? -1 : 1),
    arrow({ x: lineX, y: y1 }, 0, outside ? 1 : -1),
    textItem(text, { x: lineX + 1, y: (y0 + y1) / 2 + TEXT_MM / 2 }, TEXT_MM, { layer: DIMENSIONS }),
  ];
}

const hair = (a: Point, b: Point): DrawingItem => lineItem(a, b, { line: 'hair', layer: DIMENSIONS });

/** With a gap at the object and a little beyond the line (ISO 129-1, from memory). */
function extension(from: Point, to: Point): DrawingItem[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  if (long < 1.5) return [];
  const [ux, uy] = [(to.x - from.x) / long, (to.y - from.y) / long];
  return [hair({ x: from.x + ux, y: from.y + uy }, { x: to.x + ux * 1.2, y: to.y + uy * 1.2 })];
}

/** A filled arrowhead with its tip at a point; the line goes on in the direction given. */
function arrow(tip: Point, dx: number, dy: number): DrawingItem {
  const back = { x: tip.x + dx * ARROW_MM, y: tip.y + dy * ARROW_MM };
  const half = ARROW_MM / 6;
  return {
    kind: 'polyline',
    points: [
      tip,
      { x: back.x + dy * half, y: back.y + dx * half },
      { x: back.x - dy * half, y: back.y - dx * half },
    ],
    closed: true,
    line: 'hair',
    fill: 'ink',
    layer: DIMENSIONS,
  };
}

/** A bar of 50 mm: a print is at true size where a ruler says so. */
export function checkBar(at: Point): DrawingItem[] {
  const layer = 'scale';
  return [
    lineItem(at, { x: at.x + 50, y: at.y }, { line: 'thick', layer }),
    ...[0, 10, 20, 30, 40, 50].map((mm) =>
      lineItem(
        { x: at.x + mm, y: at.y },
        { x: at.x + mm, y: at.y - (mm % 50 === 0 ? 2 : 1) },
        { line: 'thin', layer },
      ),
    ),
    textItem('50 mm: hold a ruler to it before use', { x: at.x + 53, y: at.y }, 2, { layer }),
  ];
}

/** Two lines through a centre, a little longer than what they mark. */
export const centreLines = ({ x, y }: Point, halfX: number, halfY: number): DrawingItem[] => [
  lineItem({ x: x - halfX, y }, { x: x + halfX, y }, { line: 'hair', dash: 'chain', layer: 'centres' }),
  lineItem({ x, y: y - halfY }, { x, y: y + halfY }, { line: 'hair', dash: 'chain', layer: 'centres' }),
];
