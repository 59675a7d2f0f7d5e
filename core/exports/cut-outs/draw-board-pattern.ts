import type { Drawing, DrawingItem } from '../drawing/drawing';
import { boxItem, lineItem, textItem } from '../drawing/items';
import { acrossDimension, checkBar, downDimension } from './draw-parts';
import { onSheet } from './draw-panel-cut';
import type { BoardPattern } from './cut-out-sources';

/** Holes, or centres of pads, at true size; position 1 in a square. The body is dashed where it stands upright and is known. */
export function drawBoardPattern(pattern: BoardPattern): Drawing {
  const { places, spanXMm, spanYMm, pitchMm, rowPitchMm, holeMm, header } = pattern;
  const [x0, y0] = [-spanXMm / 2, -spanYMm / 2];
  const rows = new Set(places.map((p) => p.yMm)).size;
  const { widthMm, heightMm } = header.body ?? {};
  const upright = header.orientation === 'vertical' && widthMm !== undefined && heightMm !== undefined;
  const below = Math.max(spanYMm / 2 + (holeMm ?? 1) / 2, upright ? heightMm / 2 : 0) + 7;
  const above = -(Math.max(spanYMm / 2 + (holeMm ?? 1) / 2, upright ? heightMm / 2 : 0) + 6);
  const right = Math.max(spanXMm / 2, upright ? widthMm / 2 : 0) + 8;
  return onSheet([
    ...(upright
      ? [boxItem({ minX: -widthMm / 2, minY: -heightMm / 2, maxX: widthMm / 2, maxY: heightMm / 2 }, { line: 'hair', dash: 'dashed', layer: 'body' })]
      : []),
    ...places.flatMap((p, i) => position(p.xMm, p.yMm, isNumbered(pattern, i) ? p.cavity : '', i === 0, holeMm)),
    ...(spanXMm > 0
      ? acrossDimension(x0, x0 + spanXMm, spanYMm / 2, below, `${trim(spanXMm)} (pitch ${pitchMm})`)
      : []),
    ...(rows > 1 ? downDimension(y0, y0 + spanYMm, spanXMm / 2, right, `${trim(spanYMm)} (rows ${rowPitchMm})`) : []),
    textItem(
      holeMm === undefined ? 'centres only' : `${places.length} holes, diameter ${holeMm}`,
      { x: -right + 8, y: above },
      2.2,
      { layer: 'dimensions' },
    ),
    ...(header.orientation === 'right-angle'
      ? [
          lineItem({ x: -right, y: below + 6 }, { x: right, y: below + 6 }, { line: 'thin', dash: 'chain', layer: 'board-edge' }),
          textItem('towards this side: edge of the board, mating face', { x: -right, y: below + 9.5 }, 2, { layer: 'board-edge' }),
        ]
      : []),
    ...checkBar({ x: -right, y: below + (header.orientation === 'right-angle' ? 17 : 12) }),
  ]); // prettier-ignore
}

const NUMBER_MM = 1.6;

/** All positions where there is room for their numbers, else those at the ends of each row. */
function isNumbered({ places, pitchMm, rowPitchMm }: BoardPattern, i: number): boolean {
  const row = places.filter((p) => p.yMm === places[i]?.yMm).map((p) => p.xMm);
  const isEnd = places[i]?.xMm === Math.min(...row) || places[i]?.xMm === Math.max(...row);
  return isEnd || Math.min(pitchMm, rowPitchMm) >= 4.5;
}

const trim = (mm: number): number => Math.round(mm * 1000) / 1000;

/** A hole with its cross; without a hole the cross alone. The number stands beside it where there is room. */
function position(
  x: number,
  y: number,
  cavity: string,
  isFirst: boolean,
  holeMm: number | undefined,
): DrawingItem[] {
  const half = (holeMm ?? 0.8) / 2;
  const arm = half + 0.5;
  return [
    ...(holeMm === undefined
      ? []
      : [
          {
            kind: 'circle' as const,
            at: { x, y },
            radiusMm: holeMm / 2,
            line: 'thin' as const,
            layer: 'holes',
          },
        ]),
    lineItem({ x: x - arm, y }, { x: x + arm, y }, { line: 'hair', layer: 'centres' }),
    lineItem({ x, y: y - arm }, { x, y: y + arm }, { line: 'hair', layer: 'centres' }),
    ...(isFirst
      ? [
          boxItem(
            { minX: x - half - 0.4, minY: y - half - 0.4, maxX: x + half + 0.4, maxY: y + half + 0.4 },
            { line: 'thin', layer: 'position-1' },
          ),
        ]
      : []),
    ...(cavity === ''
      ? []
      : [
          textItem(cavity, { x, y: y - half - 0.8 }, NUMBER_MM, {
            align: 'middle' as const,
            layer: 'numbers',
            ...(isFirst ? { look: 'strong' as const } : {}),
          }),
        ]),
  ];
}
