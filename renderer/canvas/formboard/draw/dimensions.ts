import type { Point } from '@latchwork/core/base/point';
import { lengthText } from '@latchwork/core/model/length-text';
import { clamp, rimmed, text, type Pen } from '../../draw/pen';
import type { BoardDimension } from '@latchwork/core/derive/formboard/scene/board-items';
import { around, upright } from './along';
import { toleranceWords, type LengthUnit } from './lengths';

/** Lines and values of a dimension, in one colour. */
export function paintDimension(pen: Pen, d: BoardDimension, unit: LengthUnit, colour: string): void {
  paintDimensionLines(pen, d, colour);
  paintDimensionValues(pen, d, unit, colour);
}

/** Extension lines, and dimension lines with arrows. */
export function paintDimensionLines(pen: Pen, d: BoardDimension, colour?: string): void {
  const { ctx, look } = pen;
  ctx.strokeStyle = colour ?? look.tokens['ink-2'];
  ctx.lineWidth = 0.8;
  ctx.beginPath();
  for (const { at, foot } of d.datums) {
    const long = Math.hypot(foot.x - at.x, foot.y - at.y) || 1;
    const [ux, uy] = [(foot.x - at.x) / long, (foot.y - at.y) / long];
    // A gap at the object, and a little beyond the line (ISO 129-1, from memory).
    const [gap, over] = [Math.min(4, (long * pen.s) / 3), 5];
    ctx.moveTo(px(pen, at.x) + ux * gap, py(pen, at.y) + uy * gap);
    ctx.lineTo(px(pen, foot.x) + ux * over, py(pen, foot.y) + uy * over);
  }
  ctx.stroke();
  for (const m of d.measures) measureLine(pen, m.from, m.to, colour ?? look.tokens['ink-2']);
}

/** The places that it takes hold of, and the values measured along the harness. */
export function paintDimensionValues(pen: Pen, d: BoardDimension, unit: LengthUnit, colour?: string): void {
  const ink = colour ?? pen.look.tokens.ink;
  for (const { at } of d.datums) datumMark(pen, at, ink);
  if (pen.hasty) return;
  const tolerance = toleranceWords(d.dimension, unit);
  for (const m of d.measures) {
    const words =
      m.valueMm === null
        ? 'no way'
        : `${m.bent ? '⌒' : ''}${lengthText(m.valueMm, unit)}${tolerance ? ` ${tolerance}` : ''}`;
    measureValue(pen, m.from, m.to, words, ink);
  }
}

const px = (pen: Pen, x: number): number => (x - pen.ox) * pen.s;
const py = (pen: Pen, y: number): number => (y - pen.oy) * pen.s;

/** A small cross in a circle where the dimension takes hold. */
function datumMark(pen: Pen, at: Point, colour: string): void {
  const { ctx } = pen;
  const r = clamp(1.1 * pen.s, 2.4, 5);
  ctx.strokeStyle = colour;
  ctx.lineWidth = 0.9;
  const [x, y] = [px(pen, at.x), py(pen, at.y)];
  ctx.beginPath();
  ctx.arc(x, y, r + 2, 0, 7);
  ctx.moveTo(x - r - 4, y);
  ctx.lineTo(x + r + 4, y);
  ctx.moveTo(x, y - r - 4);
  ctx.lineTo(x, y + r + 4);
  ctx.stroke();
}

const ARROW_PX = 7;

function measureLine(pen: Pen, from: Point, to: Point, colour: string): void {
  const { ctx, s } = pen;
  const long = Math.hypot(to.x - from.x, to.y - from.y) * s;
  around(pen, from, Math.atan2(to.y - from.y, to.x - from.x), () => {
    ctx.strokeStyle = colour;
    ctx.fillStyle = colour;
    ctx.lineWidth = 0.9;
    ctx.beginPath();
    ctx.moveTo(0, 0);
    ctx.lineTo(long, 0);
    ctx.stroke();
    if (long < 3 * ARROW_PX) return;
    ctx.beginPath();
    for (const [x, way] of [
      [0, 1],
      [long, -1],
    ] as const) {
      ctx.moveTo(x, 0);
      ctx.lineTo(x + way * ARROW_PX, -2);
      ctx.lineTo(x + way * ARROW_PX, 2);
      ctx.closePath();
    }
    ctx.fill();
  });
}

function measureValue(pen: Pen, from: Point, to: Point, words: string, colour: string): void {
  const { ctx, look, s } = pen;
  const long = Math.hypot(to.x - from.x, to.y - from.y) * s;
  ctx.font = text(look, clamp(3 * s, 9, 12), 600);
  if (long < 24 && ctx.measureText(words).width > 38) return;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  around(pen, middle, upright(Math.atan2(to.y - from.y, to.x - from.x)), () => {
    ctx.textAlign = 'center';
    ctx.textBaseline = 'alphabetic';
    ctx.fillStyle = colour;
    rimmed(pen, words, 0, -4);
  });
}
