import type { CoveringPart } from '@latchwork/core/model/parts/accessories';
import { clamp, mono, rimmed, text, type Pen } from '../../draw/pen';
import type { BoardCovering, BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';
import { around, marksAlong, trace, upright } from './along';

/** Hatches closer than this run into each other, px. */
const HATCH_PX = 5;
/** From this width on the hatch of a form is drawn, px. */
const HATCHED_PX = 6;

type Form = CoveringPart['form'];

/** How wide a covering is drawn: true to scale, but always seen around its trunk. */
export const coveringPx = (c: BoardCovering, pen: Pick<Pen, 's'>): number =>
  Math.max(c.outsideMm * pen.s, 3.4 + c.use.covering.layer * 1.2);

/** One piece of a covering: a tube of its outside, hatched by its form. */
export function paintCovering(pen: Pen, c: BoardCovering): void {
  const { ctx, look } = pen;
  const width = coveringPx(c, pen);
  ctx.lineJoin = 'round';
  ctx.lineCap = 'butt';
  trace(pen, c.points);
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = width;
  ctx.stroke();
  ctx.strokeStyle = pen.hasty || width < HATCHED_PX ? look.tokens.line : look.tokens.sheet;
  ctx.lineWidth = Math.max(1, width - 2);
  ctx.stroke();
  if (!pen.hasty && width >= HATCHED_PX) hatch(pen, c, width);
  for (const e of c.ends)
    around(pen, e.at, e.angle, () => {
      ctx.fillStyle = look.tokens.ink;
      ctx.fillRect(-0.6, -width / 2, 1.2, width);
    });
}

/**
 * Marks across the run, own to each form: ribs of a conduit, turns of a tape, crossing threads of a braid and, wider apart,
 * of a sleeve; a tube has one line of light, a heat-shrink tube two.
 */
function hatch(pen: Pen, c: BoardCovering, width: number): void {
  const { ctx, s, look } = pen;
  const form: Form = c.use.part?.form ?? 'sleeve';
  const half = (width - 2) / 2 / s;
  ctx.strokeStyle = look.tokens['ink-2'];
  ctx.lineWidth = 0.8;
  if (form === 'tube' || form === 'heat-shrink') {
    ctx.globalAlpha = 0.7;
    ctx.setLineDash(form === 'tube' ? [14, 4] : []);
    for (const side of form === 'tube' ? [-0.45] : [-0.5, 0.5]) lineBeside(pen, c, side * half);
    ctx.setLineDash([]);
    ctx.globalAlpha = 1;
    return;
  }
  const step = Math.max(
    HATCH_PX / s,
    form === 'sleeve' ? half * 2.2 : form === 'tape' ? half * 0.9 : half * 0.7,
  );
  // How far a mark leans along the run on its way across.
  const lean = form === 'conduit' ? 0 : form === 'tape' ? half * 0.8 : half;
  ctx.globalAlpha = form === 'conduit' ? 0.8 : 0.6;
  ctx.beginPath();
  marksAlong(c.points, step, (x, y, cos, sin) => {
    for (const way of form === 'braid' || form === 'sleeve' ? [1, -1] : [1]) {
      const [ax, ay] = [x + cos * lean * way - -sin * half, y + sin * lean * way - cos * half];
      const [bx, by] = [x - cos * lean * way + -sin * half, y - sin * lean * way + cos * half];
      ctx.moveTo((ax - pen.ox) * s, (ay - pen.oy) * s);
      ctx.lineTo((bx - pen.ox) * s, (by - pen.oy) * s);
    }
  });
  ctx.stroke();
  ctx.globalAlpha = 1;
}

function lineBeside(pen: Pen, c: BoardCovering, byMm: number): void {
  const { ctx, s } = pen;
  ctx.beginPath();
  let first = true;
  marksAlong(c.points, Math.max(2 / s, 1), (x, y, cos, sin) => {
    const [px, py] = [(x - sin * byMm - pen.ox) * s, (y + cos * byMm - pen.oy) * s];
    if (first) ctx.moveTo(px, py);
    else ctx.lineTo(px, py);
    first = false;
  });
  ctx.stroke();
}

/** Names of coverings appear from this zoom on. */
const NAMES_PX_PER_MM = 1.5;

/** Designator, and nearer its form, part and layer, beside the longest piece on the side away from the length. */
export function paintCoveringName(pen: Pen, c: BoardCovering, s: BoardSegment, row: number): void {
  if (!c.named || pen.s < NAMES_PX_PER_MM || c.points.length < 2) return;
  const { ctx, look } = pen;
  const { covering, part } = c.use;
  const spot = middleOf(c);
  if (!spot) return;
  const size = clamp(2.3 * pen.s, 9, 11);
  ctx.font = mono(look, size);
  const near = pen.s >= 2.6;
  const words = [
    covering.designator ?? part?.partNumber ?? 'covering',
    ...(near
      ? [part?.form ?? 'part not known', ...(covering.designator && part ? [part.partNumber] : [])]
      : []),
    ...(near && covering.layer > 1 ? [`layer ${covering.layer}`] : []),
  ].join(' · ');
  if (ctx.measureText(words).width > spot.lengthMm * pen.s + (near ? 40 : 0)) return;
  around(pen, spot.at, upright(spot.angle), () => {
    ctx.textAlign = 'center';
    ctx.textBaseline = 'alphabetic';
    ctx.font = near ? text(look, size) : mono(look, size);
    ctx.fillStyle = look.tokens['ink-2'];
    rimmed(pen, words, 0, Math.max(2, (s.outsideMm * pen.s) / 2) + size * 1.15 + row * size * 1.25);
  });
}

function middleOf(
  c: BoardCovering,
): { at: { x: number; y: number }; angle: number; lengthMm: number } | null {
  let best: { at: { x: number; y: number }; angle: number; lengthMm: number } | null = null;
  for (let i = 1; i < c.points.length; i++) {
    const [a, b] = [c.points[i - 1], c.points[i]];
    if (!a || !b) continue;
    const lengthMm = Math.hypot(b.x - a.x, b.y - a.y);
    if (best && lengthMm <= best.lengthMm) continue;
    best = {
      at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
      angle: Math.atan2(b.y - a.y, b.x - a.x),
      lengthMm,
    };
  }
  return best;
}
