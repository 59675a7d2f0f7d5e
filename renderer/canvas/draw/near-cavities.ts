import { contactMarkOf } from '@latchwork/core/derive/contact-mark';
import type { ConnectorItem } from '../scene/items';
import { wireStyleOf, NO_COLOUR, type WireStyle } from '../scene/wire-style';
import { paintContactMark } from './contact-mark';
import { clamp, mono, shortened, text, type Pen } from './pen';
import { casingOf, wireWidthPx } from './wires';

/** Half of a cavity on the drawn face, mm. */
const HALF_MM = 2.1;

/** Near: each cavity as a chamber with the mark of its contact, the wire's end, its number and its signal. */
export function paintNearCavities(pen: Pen, c: ConnectorItem, dx: number, dy: number): void {
  const { ctx, s, look } = pen;
  const half = HALF_MM * s;
  const rows = c.use.resolved.part?.rows ?? 1;
  const numberPx = clamp(2 * s, 9, 12);
  // Between two rows each row has half the room for its names; in between more rows there is none.
  const roomMm =
    rows === 1
      ? c.symbol.widthMm - 4.5 - HALF_MM - 3
      : rows === 2
        ? c.symbol.widthMm / 2 - 4.5 - HALF_MM - 0.8
        : 0;
  c.symbol.cavities.forEach((v, i) => {
    const use = c.use.cavities[i];
    if (!use) return;
    const [x, y] = [pen.x(c.minX + dx + v.x) + 0.5, pen.y(c.minY + dy + v.y) + 0.5];
    const end = use.ends[0];
    if (end) {
      const { colour } = end.wire.wire;
      stub(
        pen,
        x + v.side * half,
        y,
        pen.x((v.side > 0 ? c.maxX : c.minX) + dx),
        colour ? wireStyleOf(colour) : NO_COLOUR,
      );
    }
    ctx.beginPath();
    ctx.roundRect(x - half, y - half, 2 * half, 2 * half, half * 0.35);
    ctx.fillStyle = look.tokens.sheet;
    ctx.fill();
    ctx.lineWidth = 1;
    ctx.strokeStyle = use.state === 'undeclared' ? look.tokens.edge : look.tokens.ink;
    ctx.stroke();
    paintContactMark(pen, contactMarkOf(use), x, y, half);
    ctx.textBaseline = 'middle';
    if (roomMm === 0) {
      ctx.font = mono(look, clamp(1.3 * s, 7, 10));
      ctx.fillStyle = look.tokens['ink-2'];
      ctx.textAlign = 'left';
      ctx.fillText(v.cavity, x - half + 2, y - half + 1.1 * s);
      return;
    }
    ctx.textAlign = v.side > 0 ? 'right' : 'left';
    ctx.font = mono(look, numberPx);
    ctx.fillStyle = look.tokens.ink;
    const from = x - v.side * (half + 0.7 * s);
    ctx.fillText(v.cavity, from, y + 0.5);
    const signal = use.signal?.name ?? end?.wire.signal?.name;
    if (!signal) return;
    const taken = Math.max(2, v.cavity.length) * numberPx * 0.62 + 0.6 * s;
    ctx.font = text(look, numberPx);
    ctx.fillStyle = look.tokens['ink-2'];
    ctx.fillText(shortened(ctx, signal, roomMm * s - taken - 0.7 * s), from - v.side * taken, y + 0.5);
  });
}

/** The last of the wire, from the edge of the body into the cavity. */
function stub({ ctx, s, look }: Pen, x0: number, y: number, x1: number, style: WireStyle): void {
  const width = wireWidthPx(s);
  ctx.beginPath();
  ctx.moveTo(x0, y);
  ctx.lineTo(x1, y);
  ctx.lineWidth = width + 1.5;
  ctx.strokeStyle = casingOf(style.base, 'near', look);
  ctx.stroke();
  ctx.lineWidth = width;
  ctx.strokeStyle = style.base === '' ? look.tokens.paper : style.base;
  ctx.stroke();
}
