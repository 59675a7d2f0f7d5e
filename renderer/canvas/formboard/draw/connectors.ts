import { cavityLayoutOf } from '@latchwork/core/derive/cavity-layout';
import { clamp, mono, rimmed, text, type Pen } from '../../draw/pen';
import { NO_COLOUR, wireStyleOf } from '../../scene/wire-style';
import type { BoardConnector } from '@latchwork/core/derive/formboard/scene/board-items';
import { around } from './along';

/** Cavities, latch and the mark of cavity 1 appear from this zoom on. */
const NEAR_PX_PER_MM = 3.2;
const MIDDLE_PX_PER_MM = 0.8;
/** From here on the latch is drawn, and the name stands beyond the body. */
const LATCH_PX_PER_MM = 1.8;

/** The body seen from above with its latch up, mating away from the harness: wires enter at the node. */
export function paintConnector(pen: Pen, c: BoardConnector): void {
  const { ctx, s, look } = pen;
  const { part } = c.use.resolved;
  const [along, half] = [Math.max(6, c.alongMm * s), Math.max(3, (c.acrossMm * s) / 2)];
  around(pen, c.at, c.angle, () => {
    if (part?.bodyForm === 'plug') tongue(pen, along, half);
    ctx.beginPath();
    ctx.roundRect(0, -half, along, 2 * half, Math.min(3, s));
    ctx.fillStyle = look.tokens.sheet;
    ctx.fill();
    ctx.strokeStyle = look.tokens.ink;
    ctx.lineWidth = 1.4;
    if (!c.sizeKnown) ctx.setLineDash([4, 3]);
    ctx.stroke();
    ctx.setLineDash([]);
    if (s < MIDDLE_PX_PER_MM) return;
    if (part?.bodyForm === 'receptacle') rim(pen, along, half);
    if (s >= LATCH_PX_PER_MM) latches(pen, c, along, half);
    if (s >= NEAR_PX_PER_MM) cavities(pen, c, half);
  });
}

/** A raised tongue on the mating side, with chamfered shoulders. */
function tongue({ ctx, s, look }: Pen, along: number, half: number): void {
  const out = clamp(2.2 * s, 2.5, 16);
  const cut = out * 0.4;
  ctx.beginPath();
  ctx.moveTo(along - 1, -half * 0.72);
  ctx.lineTo(along + out - cut, -half * 0.72);
  ctx.lineTo(along + out, -half * 0.72 + cut);
  ctx.lineTo(along + out, half * 0.72 - cut);
  ctx.lineTo(along + out - cut, half * 0.72);
  ctx.lineTo(along - 1, half * 0.72);
  ctx.fillStyle = look.tokens.sheet;
  ctx.fill();
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = 1.2;
  ctx.stroke();
}

/** The wall of a receptacle, open towards the other half. */
function rim({ ctx, s, look }: Pen, along: number, half: number): void {
  const d = clamp(0.9 * s, 2, 8);
  ctx.strokeStyle = look.tokens['ink-2'];
  ctx.lineWidth = 1;
  ctx.beginPath();
  ctx.moveTo(along, -half + d);
  ctx.lineTo(along * 0.62, -half + d);
  ctx.lineTo(along * 0.62, half - d);
  ctx.lineTo(along, half - d);
  ctx.stroke();
}

/** A latch on top as a tab in the middle, below as the same dashed, at a side as a tab standing out there. */
function latches({ ctx, s, look }: Pen, c: BoardConnector, along: number, half: number): void {
  const side = c.use.resolved.part?.latchSide;
  if (side === undefined || side === 'none') return;
  ctx.strokeStyle = look.tokens.ink;
  ctx.fillStyle = look.tokens.line;
  ctx.lineWidth = 1;
  const [from, long] = [along * 0.34, along * 0.5];
  if (side === 'top' || side === 'bottom') {
    const wide = Math.min(half * 0.5, 3 * s);
    ctx.beginPath();
    ctx.rect(from, -wide, long, 2 * wide);
    if (side === 'bottom') ctx.setLineDash([3, 2]);
    else ctx.fill();
    ctx.stroke();
    ctx.setLineDash([]);
    return;
  }
  // Looking onto the mating face, left lies to the right of the direction of mating.
  const out = clamp(1.3 * s, 2, 9);
  for (const at of side === 'both' ? [-1, 1] : side === 'left' ? [1] : [-1]) {
    ctx.beginPath();
    ctx.moveTo(from, at * half);
    ctx.lineTo(from + out * 0.6, at * (half + out));
    ctx.lineTo(from + long, at * (half + out));
    ctx.lineTo(from + long, at * half);
    ctx.fill();
    ctx.stroke();
  }
}

/** Wires as they enter the rear face, with the numbers of their cavities; a corner marks cavity 1. */
function cavities(pen: Pen, c: BoardConnector, half: number): void {
  const { ctx, s, look } = pen;
  const { part } = c.use.resolved;
  if (!part) return;
  const layout = cavityLayoutOf(part);
  const pitch = Math.min((part.pitchMm ?? 3) * s, ((2 * half) / layout.columns) * 0.95);
  const across = (column: number): number => ((layout.columns - 1) / 2 - column) * pitch;
  const wires = new Map(c.use.cavities.map((u) => [u.cavity, u.ends[0]?.wire.wire.colour]));
  const wired = new Set(c.use.cavities.flatMap((u) => (u.ends.length ? [u.cavity] : [])));
  const size = clamp(pitch * 0.6, 7, 11);
  ctx.textAlign = 'left';
  ctx.textBaseline = 'middle';
  const long = 3.4 * s;
  for (const p of layout.places) {
    if (p.row > 0) continue;
    const y = across(p.column);
    if (wired.has(p.cavity)) {
      const colour = wires.get(p.cavity);
      const { base } = colour ? wireStyleOf(colour) : NO_COLOUR;
      const thick = clamp(pitch * 0.36, 2, 7);
      ctx.fillStyle = look.tokens.ink;
      ctx.fillRect(0, y - thick / 2 - 0.7, long, thick + 1.4);
      ctx.fillStyle = base === '' ? look.tokens.paper : base;
      ctx.fillRect(0, y - thick / 2, long - 0.7, thick);
    }
    if (p.cavity === '1') {
      ctx.fillStyle = look.tokens.ink;
      ctx.beginPath();
      ctx.moveTo(0, Math.sign(y || 1) * half);
      ctx.lineTo(clamp(2.4 * s, 6, 16), Math.sign(y || 1) * half);
      ctx.lineTo(0, Math.sign(y || 1) * (half - clamp(2.4 * s, 6, 16)));
      ctx.fill();
    }
    if (pitch < 7) continue;
    ctx.font = mono(look, size);
    ctx.fillStyle = look.tokens['ink-2'];
    // Upright as far as the body lies along the text; else read with the head turned.
    ctx.save();
    ctx.translate(long + 3, y);
    if (Math.cos(c.angle) < -0.01) {
      ctx.rotate(Math.PI);
      ctx.textAlign = 'right';
    } else ctx.textAlign = 'left';
    ctx.fillText(p.cavity, 0, 0.5);
    ctx.restore();
  }
}

/** Designator in the body where it has room, else beyond it; nearer also the part. */
export function paintConnectorName(pen: Pen, c: BoardConnector): void {
  const { ctx, s, look } = pen;
  const { part, connector } = c.use.resolved;
  const size = clamp(3.4 * s, 9, 15);
  ctx.font = mono(look, size, 600);
  const width = ctx.measureText(connector.designator).width;
  const level = Math.abs(Math.cos(c.angle));
  const [along, half] = [Math.max(6, c.alongMm * s), Math.max(3, (c.acrossMm * s) / 2)];
  const [roomX, roomY] = level > 0.7 ? [along, 2 * half] : [2 * half, along];
  const inside = s < LATCH_PX_PER_MM && roomX >= width + 4 && roomY >= size;
  const [ux, uy] = [Math.cos(c.angle), Math.sin(c.angle)];
  const beyond = along + (part?.bodyForm === 'plug' ? clamp(2.2 * s, 2.5, 16) : 0) + 5;
  const reach = inside ? along / 2 : beyond + (Math.abs(ux) * width + Math.abs(uy) * size) / 2;
  const [x, y] = [pen.x(c.at.x) + ux * reach, pen.y(c.at.y) + uy * reach];
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.lineJoin = 'round';
  ctx.fillStyle = look.tokens.ink;
  if (!inside) rimmed(pen, connector.designator, x, y);
  else {
    ctx.lineWidth = 3;
    ctx.strokeStyle = look.tokens.sheet;
    if (!pen.hasty) ctx.strokeText(connector.designator, x, y + 0.5);
    ctx.fillText(connector.designator, x, y + 0.5);
  }
  if (s < NEAR_PX_PER_MM || !part) return;
  ctx.font = text(look, 11);
  ctx.fillStyle = look.tokens['ink-2'];
  rimmed(pen, part.partNumber, x, y + size);
}
