import { clamp, mono, rimmed, shortened, text, type Pen } from '../../draw/pen';
import type {
  BoardFreeEnd,
  BoardSplice,
  BoardThing,
} from '@latchwork/core/derive/formboard/scene/board-items';
import { wireStyleOf } from '../../scene/wire-style';
import { around, upright } from './along';
import { nameBeside } from './nodes';

const DETAIL_PX_PER_MM = 1.1;

/** A tie, clamp, grommet or label across its run, own symbol each. */
export function paintThing(pen: Pen, t: BoardThing): void {
  const half = Math.max(3.2, (t.aroundMm * pen.s) / 2 + 1);
  around(pen, t.at, t.angle, () => {
    if (t.kind === 'tie') tie(pen, half);
    else if (t.kind === 'clamp') clampMark(pen, half);
    else if (t.kind === 'grommet') grommet(pen, half);
    else band(pen, t, half);
  });
  if (pen.hasty) return;
  if (t.kind === 'label') labelText(pen, t, half);
  else if (t.name && pen.s >= DETAIL_PX_PER_MM) thingName(pen, t, half);
}

/** A strap across the bundle with its head on one side. */
function tie({ ctx, s, look }: Pen, half: number): void {
  const strap = clamp(1.8 * s, 2, 5);
  ctx.fillStyle = look.tokens.ink;
  ctx.fillRect(-strap / 2, -half, strap, 2 * half);
  const head = clamp(2.6 * s, 3.4, 8);
  ctx.fillRect(-head / 2, -half - head * 0.8, head, head);
  ctx.fillRect(-strap / 3, half, (strap * 2) / 3, clamp(1.6 * s, 2, 5));
}

/** A band around the bundle with a foot that has a hole. */
function clampMark({ ctx, s, look }: Pen, half: number): void {
  const broad = clamp(4 * s, 5, 14);
  const foot = clamp(6 * s, 7, 20);
  ctx.beginPath();
  ctx.roundRect(-broad / 2, -half - 1, broad, 2 * half + 2, 2);
  ctx.fillStyle = look.tokens.sheet;
  ctx.fill();
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = 1.4;
  ctx.stroke();
  ctx.beginPath();
  ctx.roundRect(-broad / 2, half + 1, broad, foot, [0, 0, broad / 2, broad / 2]);
  ctx.fill();
  ctx.stroke();
  ctx.beginPath();
  ctx.arc(0, half + 1 + foot - broad / 2, Math.max(1.2, broad * 0.2), 0, 7);
  ctx.stroke();
}

/** Two flanges with the wall between them, hatched as cut. */
function grommet({ ctx, s, look }: Pen, half: number): void {
  const [flange, gap] = [clamp(1.6 * s, 2, 6), clamp(1.4 * s, 2, 6)];
  const out = half + clamp(2.4 * s, 3, 9);
  ctx.strokeStyle = look.tokens['ink-2'];
  ctx.lineWidth = 1;
  const wall = clamp(5 * s, 6, 18);
  for (const side of [-1, 1]) {
    ctx.beginPath();
    for (let y = out; y < out + wall; y += 3.5) {
      ctx.moveTo(-gap / 2, side * y);
      ctx.lineTo(gap / 2, side * (y + 3));
    }
    ctx.moveTo(-gap / 2, side * half);
    ctx.lineTo(-gap / 2, side * (out + wall));
    ctx.moveTo(gap / 2, side * half);
    ctx.lineTo(gap / 2, side * (out + wall));
    ctx.stroke();
  }
  ctx.fillStyle = look.tokens.ink;
  for (const side of [-1, 1]) {
    ctx.beginPath();
    ctx.roundRect(side < 0 ? -gap / 2 - flange : gap / 2, -out, flange, 2 * out, 1.5);
    ctx.fill();
  }
}

/** A label round the bundle: a band as wide as the label, open at its ends. */
function band({ ctx, s, look }: Pen, t: BoardThing, half: number): void {
  const widthMm = t.part?.kind === 'label' ? (t.part.heightMm ?? 10) : 10;
  const w = clamp(widthMm * s * 0.5, 4, 30);
  ctx.fillStyle = look.tokens.sheet;
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = 1;
  ctx.beginPath();
  ctx.rect(-w / 2, -half, w, 2 * half);
  ctx.fill();
  ctx.stroke();
}

const FLAG_PX_PER_MM = 1.5;

/** What a label says, in a flag on the side away from the length, joined to its band by a hairline. */
function labelText(pen: Pen, t: BoardThing, half: number): void {
  if (pen.s < FLAG_PX_PER_MM) return;
  const { ctx, s, look } = pen;
  const size = clamp(2.2 * s, 9, 11);
  around(pen, t.at, upright(t.angle), () => {
    ctx.font = text(look, size);
    const words = shortened(ctx, t.name, 46 * s);
    const width = ctx.measureText(words).width + 8;
    // Clear of the name of a covering.
    const up = half + clamp(4 * s, 6, 14) + size;
    ctx.strokeStyle = look.tokens['ink-2'];
    ctx.lineWidth = 0.8;
    ctx.beginPath();
    ctx.moveTo(0, half);
    ctx.lineTo(0, up);
    ctx.stroke();
    ctx.fillStyle = look.tokens.sheet;
    ctx.beginPath();
    ctx.rect(-width / 2, up, width, size + 4);
    ctx.fill();
    ctx.stroke();
    ctx.fillStyle = look.tokens.ink;
    ctx.textAlign = 'center';
    ctx.textBaseline = 'middle';
    ctx.fillText(words, 0, up + size / 2 + 2.5);
  });
}

function thingName(pen: Pen, t: BoardThing, half: number): void {
  const { ctx, s, look } = pen;
  around(pen, t.at, upright(t.angle), () => {
    ctx.font = mono(look, clamp(2.2 * s, 9, 11));
    ctx.fillStyle = look.tokens['ink-2'];
    ctx.textAlign = 'center';
    ctx.textBaseline = 'alphabetic';
    // Beyond the wall that a grommet sits in.
    const wall = t.kind === 'grommet' ? clamp(7.4 * s, 9, 27) : 0;
    rimmed(pen, t.name, 0, -half - wall - clamp(3.4 * s, 5, 14));
  });
}

/** A joint in the run: a body along it, with its designator. */
export function paintSplice(pen: Pen, b: BoardSplice): void {
  const { ctx, s, look } = pen;
  const [long, thick] = [clamp(3.6 * s, 5, 18), clamp(2 * s, 3.4, 9)];
  around(pen, b.at, b.angle, () => {
    ctx.beginPath();
    ctx.roundRect(-long, -thick, 2 * long, 2 * thick, thick);
    ctx.fillStyle = look.tokens.ink;
    ctx.fill();
    ctx.lineWidth = 1.5;
    ctx.strokeStyle = look.tokens.paper;
    ctx.stroke();
  });
}

export function paintSpliceName(pen: Pen, b: BoardSplice): void {
  const { s, look } = pen;
  const size = clamp(2.8 * s, 9, 13);
  pen.ctx.fillStyle = look.tokens.ink;
  nameBeside(pen, b.at, b.nameAngle, b.splice.designator, mono(look, size, 600), size, b.clearMm);
}

/** The open end of a wire: its last millimetres in its colour, a ring, and what is said of it. */
export function paintFreeEnd(pen: Pen, e: BoardFreeEnd): void {
  const { ctx, s, look } = pen;
  const long = clamp(14 * s, 12, 60);
  const { colour } = e.wire.wire;
  around(pen, e.at, e.angle, () => {
    ctx.beginPath();
    ctx.moveTo(0, 0);
    ctx.lineTo(long, 0);
    ctx.strokeStyle = look.tokens.ink;
    ctx.lineWidth = 3;
    ctx.stroke();
    ctx.strokeStyle = colour ? wireStyleOf(colour).base : look.tokens.paper;
    ctx.lineWidth = 1.6;
    ctx.stroke();
    ctx.beginPath();
    ctx.arc(long, 0, clamp(s, 2.4, 5), 0, 7);
    ctx.fillStyle = look.tokens.paper;
    ctx.fill();
    ctx.strokeStyle = look.tokens.ink;
    ctx.lineWidth = 1.2;
    ctx.stroke();
  });
  if (pen.hasty || s < 0.8) return;
  ctx.font = text(look, clamp(2.4 * s, 9, 12));
  const right = Math.cos(e.angle) >= 0;
  ctx.textAlign = right ? 'left' : 'right';
  ctx.textBaseline = 'middle';
  ctx.fillStyle = look.tokens.ink;
  const x = pen.x(e.at.x) + Math.cos(e.angle) * (long + 8);
  rimmed(pen, e.text, x, pen.y(e.at.y) + Math.sin(e.angle) * (long + 8));
}
