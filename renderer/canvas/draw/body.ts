import { TITLE_HEIGHT_MM } from '@latchwork/core/derive/symbol';
import type { ConnectorItem } from '../scene/items';
import { mono, type Pen } from './pen';

/** Body of a connector on the canvas, px; the title stands above it. */
export interface Body {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export const bodyOf = (pen: Pen, c: ConnectorItem, dx = 0, dy = 0): Body => ({
  x0: pen.x(c.minX + dx),
  y0: pen.y(c.minY + dy + TITLE_HEIGHT_MM),
  x1: pen.x(c.maxX + dx),
  y1: pen.y(c.maxY + dy),
});

export type Side = 'left' | 'right' | 'top' | 'bottom';
const OPPOSITE: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' };

/** Side on which the other half is met: away from the wires; no wires leave a header, so there it is the exit side. */
export function matingSide({ use }: ConnectorItem): Side {
  const { part, connector } = use.resolved;
  if ((part?.rows ?? 1) > 1) return 'bottom';
  return part?.kind === 'header' ? connector.exit : OPPOSITE[connector.exit];
}

/** Outline, tongue or inner line, and what the body stands on. */
export function paintBody(pen: Pen, c: ConnectorItem, b: Body): void {
  const { ctx, s, look } = pen;
  const { part, connector } = c.use.resolved;
  const side = matingSide(c);
  const mounting = part?.mounting;
  ctx.lineWidth = pen.detail === 'near' ? 1.6 : 1.2;
  ctx.strokeStyle = look.tokens.ink;
  ctx.fillStyle = look.tokens.sheet;
  if (mounting === 'panel') panelSection(pen, b, side);
  if (part?.kind === 'header' || mounting === 'board') boardEdge(pen, b, OPPOSITE[side]);
  ctx.strokeStyle = look.tokens.ink;
  ctx.fillStyle = look.tokens.sheet;
  if (part?.bodyForm === 'plug') tongue(pen, b, side);
  // What is bought with the equipment is drawn a little lighter than what the harness brings.
  ctx.strokeStyle = connector.supply === 'equipment' ? look.tokens['ink-2'] : look.tokens.ink;
  ctx.beginPath();
  ctx.roundRect(b.x0 + 0.5, b.y0 + 0.5, b.x1 - b.x0, b.y1 - b.y0, Math.min(5, s));
  ctx.fill();
  ctx.stroke();
  if (part?.bodyForm === 'receptacle') innerLine(pen, b);
}

function innerLine({ ctx, s, look }: Pen, b: Body): void {
  const d = Math.max(2, Math.round(0.95 * s));
  ctx.lineWidth = 1;
  ctx.strokeStyle = look.tokens['ink-2'];
  ctx.beginPath();
  ctx.roundRect(
    b.x0 + d + 0.5,
    b.y0 + d + 0.5,
    b.x1 - b.x0 - 2 * d,
    b.y1 - b.y0 - 2 * d,
    Math.min(3, 0.6 * s),
  );
  ctx.stroke();
}

/** A raised tongue on the mating side, with chamfered shoulders. */
function tongue({ ctx, s }: Pen, b: Body, side: Side): void {
  const out = Math.max(2, 1.7 * s);
  const cut = out * 0.45;
  const along = side === 'bottom' || side === 'top' ? b.x1 - b.x0 : b.y1 - b.y0;
  const inset = along * 0.16;
  const path: [number, number][] = [
    [inset, 0],
    [inset, out - cut],
    [inset + cut, out],
    [along - inset - cut, out],
    [along - inset, out - cut],
    [along - inset, 0],
  ];
  ctx.beginPath();
  for (const [a, o] of path) ctx.lineTo(...at(b, side, a, o));
  ctx.closePath();
  ctx.fill();
  ctx.stroke();
}

/** A point given by its way along a side and its distance out from the body. */
function at(b: Body, side: Side, along: number, out: number): [number, number] {
  switch (side) {
    case 'left':
      return [b.x0 + 0.5 - out, b.y0 + 0.5 + along];
    case 'right':
      return [b.x1 + 0.5 + out, b.y0 + 0.5 + along];
    case 'top':
      return [b.x0 + 0.5 + along, b.y0 + 0.5 - out];
    case 'bottom':
      return [b.x0 + 0.5 + along, b.y1 + 0.5 + out];
  }
}

/** The edge of the board that the header stands on: a hatched strip along its foot. */
function boardEdge(pen: Pen, b: Body, side: Side): void {
  const { s } = pen;
  const along = side === 'bottom' || side === 'top' ? b.x1 - b.x0 : b.y1 - b.y0;
  const over = 1.5 * s;
  hatched(pen, [at(b, side, -over, 0), at(b, side, along + over, Math.max(3, 1.8 * s))]);
}

/** The panel cut through on both sides of the body that stands in it. */
function panelSection(pen: Pen, b: Body, side: Side): void {
  const { s } = pen;
  const along = side === 'bottom' || side === 'top' ? b.x1 - b.x0 : b.y1 - b.y0;
  const [over, thick, back] = [5 * s, Math.max(3, 1.5 * s), -0.8 * s];
  hatched(pen, [at(b, side, -over, back), at(b, side, 0, back - thick)]);
  hatched(pen, [at(b, side, along, back), at(b, side, along + over, back - thick)]);
}

/** A section as drawings show it: an outline filled with lines at 45 degrees (ISO 128-3, from memory). */
function hatched({ ctx, s, look }: Pen, [p, q]: readonly [[number, number], [number, number]]): void {
  const [x0, x1] = [Math.min(p[0], q[0]), Math.max(p[0], q[0])];
  const [y0, y1] = [Math.min(p[1], q[1]), Math.max(p[1], q[1])];
  ctx.save();
  ctx.beginPath();
  ctx.rect(x0, y0, x1 - x0, y1 - y0);
  ctx.fillStyle = look.tokens.sheet;
  ctx.fill();
  ctx.lineWidth = 1;
  ctx.strokeStyle = look.tokens['ink-2'];
  ctx.stroke();
  ctx.clip();
  ctx.beginPath();
  const step = Math.max(3, 1.1 * s);
  const h = y1 - y0;
  for (let x = x0 - h; x < x1; x += step) {
    ctx.moveTo(x, y1);
    ctx.lineTo(x + h, y0);
  }
  ctx.lineWidth = 0.8;
  ctx.stroke();
  ctx.restore();
}

/** Latch, keying and the mark of cavity 1: only on the drawn face. */
export function paintFace(pen: Pen, c: ConnectorItem, b: Body): void {
  const { part } = c.use.resolved;
  if (!part) return;
  for (const side of latchSides(c)) latch(pen, c, b, side);
  if (part.keying && part.keying !== 'none') key(pen, b, part.keying);
  const first = c.symbol.cavities[0];
  if (first && c.symbol.cavities.length > 1) cornerMark(pen, c, b, first.x, first.y);
}

/** The part states sides of the mating face; the symbol is that face turned a quarter, mirrored in the other view. */
function latchSides({ use }: ConnectorItem): Side[] {
  const { part, connector } = use.resolved;
  const up: Side = connector.exit === 'right' ? 'right' : 'left';
  const first: Side = connector.view === 'mating-face' ? 'top' : 'bottom';
  switch (part?.latchSide) {
    case 'top':
      return [up];
    case 'bottom':
      return [OPPOSITE[up]];
    case 'left':
      return [first];
    case 'right':
      return [OPPOSITE[first]];
    case 'both':
      return ['top', 'bottom'];
    default:
      return [];
  }
}

/** A tab between two wires, so that neither is hidden. */
function latch({ ctx, s, look }: Pen, c: ConnectorItem, b: Body, side: Side): void {
  const upright = side === 'left' || side === 'right';
  const ys = c.symbol.cavities.map((v) => v.y - TITLE_HEIGHT_MM);
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
  const between = ys.some((y) => Math.abs(y - middle) < 1) ? middle + 3 : middle;
  const centre = upright ? between * s : (b.x1 - b.x0) / 2;
  const half = (upright ? 1.7 : 3.4) * s;
  const out = 1.15 * s;
  ctx.beginPath();
  ctx.moveTo(...at(b, side, centre - half, 0));
  ctx.lineTo(...at(b, side, centre - half + out * 0.5, out));
  ctx.lineTo(...at(b, side, centre + half - out * 0.5, out));
  ctx.lineTo(...at(b, side, centre + half, 0));
  ctx.fillStyle = look.tokens.line;
  ctx.fill();
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = 1.2;
  ctx.stroke();
}

/** A notch in the upper edge whose place tells the code, and the code itself. */
function key({ ctx, s, look }: Pen, b: Body, code: string): void {
  const share = 0.3 + 0.2 * ((code.charCodeAt(0) + 1) % 3);
  const x = b.x0 + (b.x1 - b.x0) * share;
  ctx.fillStyle = look.tokens.ink;
  ctx.beginPath();
  ctx.moveTo(x - 1.1 * s, b.y0 + 1);
  ctx.lineTo(x + 1.1 * s, b.y0 + 1);
  ctx.lineTo(x + 0.6 * s, b.y0 + 1 + 1.1 * s);
  ctx.lineTo(x - 0.6 * s, b.y0 + 1 + 1.1 * s);
  ctx.fill();
  if (s < 6) return;
  ctx.font = mono(look, Math.min(11, 1.7 * s));
  ctx.textAlign = 'left';
  ctx.textBaseline = 'top';
  ctx.fillText(code, x + 1.6 * s, b.y0 + 1.4 * s);
}

function cornerMark({ ctx, s, look }: Pen, c: ConnectorItem, b: Body, x: number, y: number): void {
  const right = x > c.symbol.widthMm / 2;
  const low = y > (c.symbol.heightMm + TITLE_HEIGHT_MM) / 2;
  const [cx, cy] = [right ? b.x1 : b.x0, low ? b.y1 : b.y0];
  const size = 2.1 * s;
  ctx.fillStyle = look.tokens.ink;
  ctx.beginPath();
  ctx.moveTo(cx + 0.5, cy + 0.5);
  ctx.lineTo(cx + 0.5 + (right ? -size : size), cy + 0.5);
  ctx.lineTo(cx + 0.5, cy + 0.5 + (low ? -size : size));
  ctx.fill();
}
