import { boxesMeet } from '@latchwork/core/base/point';
import { CAVITY_RADIUS_MM, TITLE_HEIGHT_MM } from '@latchwork/core/derive/symbol';
import type { ConnectorItem } from '../scene/items';
import { bodyOf, paintBody, paintFace, type Body } from './body';
import { paintNearCavities } from './near-cavities';
import { clamp, mono, rimmed, text, type Pen } from './pen';

/** From this size on a number can be read in its cavity, px. */
const LEAST_NUMBER_PX = 6;
const VIEW_NAMES = { 'mating-face': 'mating face', 'wire-entry-face': 'wire-entry face' } as const;

export function paintConnectors(
  pen: Pen,
  connectors: readonly ConnectorItem[],
  skip: ReadonlySet<string>,
): void {
  const inView = connectors.filter((c) => boxesMeet(c, pen.view) && !skip.has(c.id));
  if (pen.detail === 'far') paintBoxes(pen, inView, 0, 0);
  else paintSymbols(pen, inView, 0, 0);
}

/** Connectors that are being moved, drawn away from their place. */
export function paintMovedConnectors(pen: Pen, list: readonly ConnectorItem[], dx: number, dy: number): void {
  if (pen.detail === 'far') paintBoxes(pen, list, dx, dy);
  else paintSymbols(pen, list, dx, dy);
}

/** Far: named boxes in the proportion of the part, the designator as large as it fits. */
function paintBoxes(pen: Pen, list: readonly ConnectorItem[], dx: number, dy: number): void {
  const { ctx, look } = pen;
  ctx.beginPath();
  for (const c of list) {
    const [x, y] = [pen.x(c.minX + dx), pen.y(c.minY + dy)];
    ctx.rect(x + 0.5, y + 0.5, pen.x(c.maxX + dx) - x, pen.y(c.maxY + dy) - y);
  }
  ctx.fillStyle = look.tokens.sheet;
  ctx.fill();
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = 1;
  ctx.stroke();
  ctx.fillStyle = look.tokens.ink;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  let font = '';
  for (const c of list) {
    const name = c.use.resolved.connector.designator;
    const width = (c.maxX - c.minX) * pen.s;
    const size = Math.floor(
      Math.min(16, (c.maxY - c.minY) * pen.s * 0.6, (width - 4) / (0.62 * name.length)),
    );
    if (size < 5) continue;
    const wanted = mono(look, size, 600);
    if (wanted !== font) ctx.font = font = wanted;
    ctx.fillText(name, pen.x((c.minX + c.maxX) / 2 + dx), pen.y((c.minY + c.maxY) / 2 + dy));
  }
}

function paintSymbols(pen: Pen, list: readonly ConnectorItem[], dx: number, dy: number): void {
  const bodies = list.map((c) => bodyOf(pen, c, dx, dy));
  list.forEach((c, i) => paintBody(pen, c, bodies[i] as Body));
  if (pen.detail === 'near')
    list.forEach((c, i) => {
      paintFace(pen, c, bodies[i] as Body);
      paintNearCavities(pen, c, dx, dy);
    });
  else paintMiddleCavities(pen, list, dx, dy);
  paintTitles(pen, list, bodies);
}

/** Middle: circles with their numbers, each with a leader to the edge where its wire leaves. */
function paintMiddleCavities(pen: Pen, list: readonly ConnectorItem[], dx: number, dy: number): void {
  const { ctx, s, look } = pen;
  const r = CAVITY_RADIUS_MM * s;
  const leaders = new Path2D();
  const rings = new Path2D();
  const blanks = new Path2D();
  for (const c of list) {
    const { cavities } = c.use;
    c.symbol.cavities.forEach((v, i) => {
      const x = (c.minX + dx + v.x - pen.ox) * s;
      const y = (c.minY + dy + v.y - pen.oy) * s;
      const used = cavities[i]?.state === 'wired';
      const path = used ? rings : blanks;
      path.moveTo(x + r, y);
      path.arc(x, y, r, 0, 7);
      if (!used) return;
      const edge = (v.side > 0 ? c.maxX : c.minX) + dx;
      leaders.moveTo(x + v.side * r, y);
      leaders.lineTo((edge - pen.ox) * s, y);
    });
  }
  ctx.lineWidth = 1;
  ctx.strokeStyle = look.tokens.edge;
  ctx.stroke(blanks);
  ctx.strokeStyle = look.tokens.ink;
  ctx.stroke(rings);
  ctx.stroke(leaders);
  const size = Math.min(13, r * 1.3);
  if (size < LEAST_NUMBER_PX || pen.hasty) return;
  ctx.fillStyle = look.tokens.ink;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.font = mono(look, size);
  for (const c of list)
    for (const v of c.symbol.cavities)
      ctx.fillText(v.cavity, pen.x(c.minX + dx + v.x), pen.y(c.minY + dy + v.y) + 0.5);
}

/** Designator above the body; near, the part number beside it; below it, from which side one looks. */
function paintTitles(pen: Pen, list: readonly ConnectorItem[], bodies: readonly Body[]): void {
  const { ctx, s, look, detail } = pen;
  ctx.textBaseline = 'alphabetic';
  ctx.textAlign = 'left';
  const size = clamp(4.4 * s, 8, 20);
  const lift = clamp(1.6 * s, 2, 14);
  ctx.font = mono(look, size, 600);
  ctx.fillStyle = look.tokens.ink;
  list.forEach((c, i) => {
    const b = bodies[i] as Body;
    rimmed(pen, c.use.resolved.connector.designator, b.x0, b.y0 - lift);
  });
  if (s < 2.4 || pen.hasty) return;
  ctx.fillStyle = look.tokens['ink-2'];
  ctx.font = text(look, clamp(2 * s, 8, 11));
  ctx.textAlign = 'center';
  list.forEach((c, i) => {
    const b = bodies[i] as Body;
    const below = c.use.resolved.part?.bodyForm === 'plug' && (c.use.resolved.part.rows ?? 1) > 1 ? 1.7 : 0;
    rimmed(
      pen,
      VIEW_NAMES[c.use.resolved.connector.view],
      (b.x0 + b.x1) / 2,
      b.y1 + below * s + clamp(3.4 * s, 10, 26),
    );
  });
  if (detail !== 'near') return;
  ctx.textAlign = 'right';
  ctx.font = mono(look, clamp(2.1 * s, 9, 12));
  list.forEach((c, i) => {
    const b = bodies[i] as Body;
    const { part, connector } = c.use.resolved;
    const taken = connector.designator.length * size * 0.62;
    if (part && part.partNumber.length * 7 < b.x1 - b.x0 - taken + TITLE_HEIGHT_MM)
      rimmed(pen, part.partNumber, b.x1, b.y0 - lift);
    else if (part) {
      ctx.textAlign = 'left';
      rimmed(pen, part.partNumber, b.x0, b.y0 - lift - size);
      ctx.textAlign = 'right';
    }
  });
}
