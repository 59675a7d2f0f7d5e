import type { Point } from '../../base/point';
import { cavityLayoutOf } from '../../derive/cavity-layout';
import type { BoardConnector } from '../../derive/formboard/scene/board-items';
import type { DrawingItem } from '../drawing/drawing';
import { across } from './draw-runs';

const LAYER = 'connectors';
/** Length of a tongue beyond the mating face, mm. */
const TONGUE_MM = 2;
const ARROW_MM = 3;
const CORNER_MM = 2.2;
/** Where a latch on top begins, as a part of the body: the designator has the rest. */
export const LATCH_FROM = 0.74;

/** A point so far along the mating axis from the rear face, and so far beside it. */
export const along = ({ at, angle }: Pick<BoardConnector, 'at' | 'angle'>, mm: number, asideMm = 0): Point =>
  across({ x: at.x + Math.cos(angle) * mm, y: at.y + Math.sin(angle) * mm }, angle, asideMm);

/** How far a connector reaches from its node, arrow included. */
export const reachMm = (c: BoardConnector): number => c.alongMm + tongueMm(c) + ARROW_MM;

const tongueMm = (c: BoardConnector): number => (c.use.resolved.part?.bodyForm === 'plug' ? TONGUE_MM : 0);

/**
 * A body seen from above with its latch up: the outline dashed where it is assumed, a tongue on a plug, the wall of a
 * receptacle, the latch, the corner at cavity 1, and an arrow into the direction of mating.
 */
export function drawBody(c: BoardConnector): DrawingItem[] {
  const half = c.acrossMm / 2;
  const shape = (points: readonly (readonly [number, number])[], style: object): DrawingItem => ({
    kind: 'polyline',
    points: points.map(([mm, aside]) => along(c, mm, aside)),
    layer: LAYER,
    ...style,
  });
  const front = c.alongMm;
  const tip = front + tongueMm(c);
  const wide = half * 0.72;
  const cut = TONGUE_MM * 0.4;
  const form = c.use.resolved.part?.bodyForm;
  return [
    ...(form === 'plug'
      ? [
          shape(
            [[front, -wide], [tip - cut, -wide], [tip, cut - wide], [tip, wide - cut], [tip - cut, wide], [front, wide]],
            { fill: 'paper', line: 'thin' },
          ),
        ]
      : []),
    shape([[0, -half], [front, -half], [front, half], [0, half]], {
      closed: true,
      fill: 'paper',
      line: 'thick',
      ...(c.sizeKnown ? {} : { dash: 'dashed' }),
    }),
    ...(form === 'receptacle'
      ? [shape([[front, 0.9 - half], [front * 0.9, 0.9 - half], [front * 0.9, half - 0.9], [front, half - 0.9]], { line: 'thin' })]
      : []),
    ...latch(c, shape),
    ...corner(c, shape),
    shape([[tip + ARROW_MM, 0], [tip + 0.4, -1.6], [tip + 0.4, 1.6]], { closed: true, fill: 'ink' }),
  ];
} // prettier-ignore

type Shape = (points: readonly (readonly [number, number])[], style: object) => DrawingItem;

/** On top as a tab at the mating end, below as the same dashed, at a side as a tab that stands out there. */
function latch(c: BoardConnector, shape: Shape): DrawingItem[] {
  const side = c.use.resolved.part?.latchSide;
  if (side === undefined || side === 'none') return [];
  const half = c.acrossMm / 2;
  const [from, to] = [c.alongMm * LATCH_FROM, c.alongMm];
  if (side === 'top' || side === 'bottom') {
    const wide = Math.min(half * 0.5, 3);
    const style = side === 'top' ? { fill: 'light', line: 'thin' } : { line: 'thin', dash: 'dashed' };
    return [shape([[from, -wide], [to, -wide], [to, wide], [from, wide]], { closed: true, ...style })]; // prettier-ignore
  }
  // Looking onto the mating face, left lies to the right of the direction of mating.
  const sides = side === 'both' ? [-1, 1] : [side === 'left' ? 1 : -1];
  return sides.map((at) =>
    shape(
      [
        [from, at * half],
        [from + 0.8, at * (half + 1.3)],
        [to, at * (half + 1.3)],
        [to, at * half],
      ],
      { fill: 'light', line: 'thin' },
    ),
  );
}

/** The corner of the rear face at which cavity 1 lies; none where it lies in the middle or is not known. */
function corner(c: BoardConnector, shape: Shape): DrawingItem[] {
  const { part } = c.use.resolved;
  if (!part || part.cavityOneCorner === undefined) return [];
  const layout = cavityLayoutOf(part);
  const place = layout.byCavity.get('1');
  const side = place ? Math.sign((layout.columns - 1) / 2 - place.column) : 0;
  if (side === 0) return [];
  const edge = (side * c.acrossMm) / 2;
  return [shape([[0, edge], [CORNER_MM, edge], [0, edge - side * CORNER_MM]], { closed: true, fill: 'ink' })]; // prettier-ignore
}
