import type { Point } from '@latchwork/core/base/point';
import type { ResolvedWire } from '@latchwork/core/derive/harness';
import { casingOf } from '../../draw/wires';
import { isFaint } from '../../draw/look';
import type { Pen } from '../../draw/pen';
import { NO_COLOUR, wireStyleOf } from '../../scene/wire-style';
import type { BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';
import { besides } from '@latchwork/core/derive/formboard/scene/line';
import { trace } from './along';

/** Share of the trunk's width that its lanes take. */
const FILLED = 0.92;
/** From this width on lanes are told apart, px. */
const LEAST_PX = 1.5;
const STRIPE_MM = 1.6;

const laneMm = (s: BoardSegment): number => (s.widthMm * FILLED) / Math.max(1, s.use?.wires.length ?? 1);

export const lanesShow = (pen: Pick<Pen, 's'>, s: BoardSegment): boolean => laneMm(s) * pen.s >= LEAST_PX;

/** Lanes keep their side of the board from one segment to the next, whichever way each was drawn. */
function isTurned({ points }: BoardSegment): boolean {
  const [a, b] = [points[0], points.at(-1)];
  return a !== undefined && b !== undefined && (a.x > b.x || (a.x === b.x && a.y > b.y));
}

/** How far the lane of the i-th wire of a segment lies to the right of its line, mm. */
function laneOffset(s: BoardSegment, i: number): number {
  const n = s.use?.wires.length ?? 1;
  return (isTurned(s) ? -1 : 1) * (i - (n - 1) / 2) * laneMm(s);
}

export const lanePoints = (s: BoardSegment, i: number): readonly Point[] =>
  besides(s.points, laneOffset(s, i));

/** The wire whose lane lies so far to the right of the segment's line, mm; none beside the trunk. */
export function wireInLane(s: BoardSegment, asideMm: number): ResolvedWire | undefined {
  const wires = s.use?.wires ?? [];
  const place = (isTurned(s) ? -asideMm : asideMm) / laneMm(s) + (wires.length - 1) / 2;
  return wires[Math.round(place)];
}

/** Each wire of a segment as a line of its own colour. */
export function paintLanes(pen: Pen, s: BoardSegment): void {
  s.use?.wires.forEach((wire, i) => paintLane(pen, s, wire, i));
}

export function paintLane(pen: Pen, s: BoardSegment, wire: ResolvedWire, i: number, lit = false): void {
  const { ctx, look } = pen;
  const { colour } = wire.wire;
  const { base, stripes } = colour ? wireStyleOf(colour) : NO_COLOUR;
  const width = laneMm(s) * pen.s;
  trace(pen, lanePoints(s, i));
  ctx.lineCap = 'butt';
  if (lit) {
    ctx.strokeStyle = look.tokens.copper;
    ctx.lineWidth = width + 4;
    ctx.stroke();
  }
  const cased = width >= 3 || base === '' || isFaint(base, look);
  if (cased) {
    ctx.strokeStyle = casingOf(base, 'near', look);
    ctx.lineWidth = width * 0.94;
    ctx.stroke();
  }
  ctx.strokeStyle = base === '' ? look.tokens.paper : base;
  ctx.lineWidth = cased ? Math.max(0.7, width * 0.94 - 1.2) : width * 0.86;
  ctx.stroke();
  if (width < 2.5) return;
  const dash = STRIPE_MM * pen.s;
  stripes.forEach((stripe, k) => {
    ctx.setLineDash([dash, dash * (2.3 * stripes.length - 1)]);
    ctx.lineDashOffset = -k * dash * 2.3;
    ctx.strokeStyle = stripe;
    ctx.stroke();
  });
  ctx.setLineDash([]);
  ctx.lineDashOffset = 0;
}
