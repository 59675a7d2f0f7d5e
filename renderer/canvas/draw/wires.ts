import { boxesMeet } from '@latchwork/core/base/point';
import { moveAlong } from '../scene/curve';
import type { WireItem } from '../scene/items';
import { isFaint } from './look';
import { clamp, inMillimetres, mono, rimmed, type Pen } from './pen';

/** Width of a wire's base colour on the screen, px. */
export const wireWidthPx = (s: number): number => clamp(0.72 * s, 1.15, 6);
/** How far the ink casing stands out, both sides together, px. */
const CASING_PX = 1.5;
/** Length and spacing of the dashes of a stripe, mm. */
const STRIPE_MM = 2;
const BASE_MM = 2.6;
/** From this zoom on wires carry their letter codes. */
const CODES_PX_PER_MM = 3.4;
const NAMES_PX_PER_MM = 6;

/** The wires in view, in order; those in `skip` are drawn elsewhere. */
export function paintWires(pen: Pen, wires: readonly WireItem[], skip: ReadonlySet<string>): void {
  if (pen.hasty) return paintHasty(pen, wires, skip);
  const inView: WireItem[] = [];
  for (const w of wires) if (boxesMeet(w, pen.view) && (skip.size === 0 || !skip.has(w.id))) inView.push(w);
  inMillimetres(pen, (ctx) => {
    ctx.lineJoin = 'round';
    for (const w of inView) strokeWire(ctx, w, pen);
  });
  if (pen.s >= CODES_PX_PER_MM) paintCodes(pen, inView);
}

/** Ink casing, base colour, stripes. A canvas in millimetres. */
export function strokeWire(ctx: CanvasRenderingContext2D, w: WireItem, { s, look, detail }: Pen): void {
  const { base, stripes } = w.style;
  const width = wireWidthPx(s);
  ctx.beginPath();
  moveAlong(ctx, w.curve);
  if (base === '' || detail !== 'far' || isFaint(base, look)) {
    ctx.strokeStyle = casingOf(base, detail, look);
    ctx.lineWidth = (width + (detail === 'far' ? 1 : CASING_PX)) / s;
    ctx.stroke();
  }
  ctx.strokeStyle = base === '' ? look.tokens.paper : base;
  ctx.lineWidth = width / s;
  ctx.stroke();
  if (detail === 'far') return;
  stripes.forEach((stripe, i) => {
    const unit = STRIPE_MM + BASE_MM;
    ctx.setLineDash([STRIPE_MM, unit * stripes.length - STRIPE_MM]);
    ctx.lineDashOffset = -i * unit;
    ctx.strokeStyle = stripe;
    ctx.stroke();
    ctx.setLineDash([]);
  });
}

/** Ink on paper. On a dark ground ink would glow: there it is kept for the wires that need it, the others get a gap. */
export function casingOf(base: string, detail: Pen['detail'], look: Pen['look']): string {
  if (base !== '' && detail === 'far') return look.tokens['ink-2'];
  return look.ground > 0.4 || base === '' || isFaint(base, look) ? look.tokens.ink : look.tokens.paper;
}

/** Hairlines, one path per colour: at one pixel the rasteriser is fastest with long paths. */
function paintHasty(pen: Pen, wires: readonly WireItem[], skip: ReadonlySet<string>): void {
  inMillimetres(pen, (ctx) => {
    ctx.lineWidth = 1 / pen.s;
    for (const [base, group] of byColour(wires)) {
      ctx.strokeStyle = base === '' || isFaint(base, pen.look) ? pen.look.tokens['ink-2'] : base;
      ctx.beginPath();
      for (const w of group) if (boxesMeet(w, pen.view) && !skip.has(w.id)) moveAlong(ctx, w.curve);
      ctx.stroke();
    }
  });
}

const colourGroups = new WeakMap<readonly WireItem[], ReadonlyMap<string, readonly WireItem[]>>();

function byColour(wires: readonly WireItem[]): ReadonlyMap<string, readonly WireItem[]> {
  let groups = colourGroups.get(wires);
  if (!groups) {
    const made = new Map<string, WireItem[]>();
    for (const w of wires) {
      const group = made.get(w.style.base);
      if (group) group.push(w);
      else made.set(w.style.base, [w]);
    }
    groups = made;
    colourGroups.set(wires, groups);
  }
  return groups;
}

/** Letter codes beside both ends, with the designator when there is room; one line of text per cavity. */
export function paintCodes(pen: Pen, wires: readonly WireItem[]): void {
  const { ctx, s, look } = pen;
  const size = clamp(1.75 * s, 8, 11);
  ctx.font = mono(look, size);
  ctx.fillStyle = look.tokens['ink-2'];
  ctx.textBaseline = 'alphabetic';
  const taken = new Set<number>();
  for (const w of wires)
    w.mouths.forEach((m, end) => {
      const key = Math.round(m.x * 8) * 1e6 + Math.round(m.y * 8);
      if (taken.has(key)) return;
      taken.add(key);
      const words = (
        s >= NAMES_PX_PER_MM ? `${w.wire.wire.designator} ${w.style.code}` : w.style.code
      ).trim();
      ctx.textAlign = m.side > 0 ? 'left' : 'right';
      // On the side that the wire turns away from.
      const under = (end === 0 ? w.curve[7] : w.curve.at(-7)) ?? m.y;
      const clear = wireWidthPx(s) / 2 + 2.5;
      const x = pen.x(m.x + m.side * 1.6);
      const y = pen.y(m.y) + (under < m.y - 0.5 ? clear + size * 0.72 : -clear);
      rimmed(pen, words, x, y);
    });
}
