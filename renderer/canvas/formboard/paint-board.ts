import type { Point } from '@latchwork/core/base/point';
import { lengthText } from '@latchwork/core/model/length-text';
import { clamp, mono, text, type Pen } from '../draw/pen';
import type { BoardConnector, BoardScene } from './board-scene';
import { pointAlong, type SegmentItem } from './segment-item';

export interface BoardLook {
  readonly lengthUnit: 'mm' | 'in';
  /** Ids that are lit because they are selected, or lie on the way of what is. */
  readonly lit: ReadonlySet<string>;
}

/** The formboard at true scale: coverings under their trunks, then segments, connectors, nodes, and all names. */
export function paintBoard(pen: Pen, scene: BoardScene, look: BoardLook): void {
  for (const c of scene.coverings) for (const run of c.runs) covering(pen, run, look.lit.has(c.covering.id));
  for (const s of scene.segments) trunk(pen, s, look.lit.has(s.segment.id));
  for (const t of scene.ties) tie(pen, t.at, t.angle);
  for (const c of scene.connectors) connector(pen, c, look.lit.has(c.use.resolved.connector.id));
  for (const s of scene.splices) splice(pen, s.at, s.splice.designator, look.lit.has(s.splice.id));
  for (const n of scene.nodes) node(pen, n.at, n.node.designator, n.nameSide, look.lit.has(n.node.id));
  if (!pen.hasty) for (const s of scene.segments) length(pen, s, look.lengthUnit);
}

/** A bundle of n wires is drawn as thick as about the root of n. */
const trunkMm = (wires: number): number => (wires === 0 ? 0.6 : 1 + 0.9 * Math.sqrt(wires));

function line(pen: Pen, points: readonly Point[]): void {
  const { ctx, s, ox, oy } = pen;
  ctx.beginPath();
  for (const p of points) ctx.lineTo((p.x - ox) * s, (p.y - oy) * s);
}

function trunk(pen: Pen, item: SegmentItem, lit: boolean): void {
  const { ctx, s, look } = pen;
  const width = clamp(trunkMm(item.wires) * s, 1.5, 14);
  ctx.lineCap = 'round';
  ctx.lineJoin = 'round';
  line(pen, item.points);
  if (lit) {
    ctx.strokeStyle = look.tokens.copper;
    ctx.lineWidth = width + 5;
    ctx.stroke();
  }
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = width;
  ctx.stroke();
  if (width >= 4) {
    ctx.strokeStyle = look.tokens.sheet;
    ctx.lineWidth = width - 2.4;
    ctx.stroke();
  }
  ctx.lineCap = 'butt';
}

function covering(pen: Pen, run: readonly Point[], lit: boolean): void {
  const { ctx, s, look } = pen;
  const width = clamp(6.5 * s, 7, 26);
  ctx.lineJoin = 'round';
  line(pen, run);
  ctx.strokeStyle = lit ? look.tokens.copper : look.tokens['ink-2'];
  ctx.lineWidth = width;
  ctx.stroke();
  ctx.strokeStyle = look.tokens.line;
  ctx.lineWidth = width - (lit ? 4 : 2.4);
  ctx.stroke();
}

function tie(pen: Pen, at: Point, angle: number): void {
  const { ctx, s, look } = pen;
  ctx.save();
  ctx.translate(pen.x(at.x), pen.y(at.y));
  ctx.rotate(angle);
  ctx.fillStyle = look.tokens.ink;
  const h = clamp(4.5 * s, 6, 18);
  ctx.fillRect(-1.2, -h / 2, 2.4, h);
  ctx.restore();
}

function connector(pen: Pen, c: BoardConnector, lit: boolean): void {
  const { ctx, s, look } = pen;
  const { part, connector: record } = c.use.resolved;
  const [along, half] = [c.alongMm * s, (c.acrossMm * s) / 2];
  ctx.save();
  ctx.translate((c.at.x - pen.ox) * s, (c.at.y - pen.oy) * s);
  ctx.rotate(c.angle);
  ctx.beginPath();
  ctx.roundRect(0, -half, along, 2 * half, Math.min(4, s));
  ctx.fillStyle = look.tokens.sheet;
  ctx.fill();
  ctx.strokeStyle = lit ? look.tokens.copper : look.tokens.ink;
  ctx.lineWidth = lit ? 2.4 : 1.4;
  ctx.stroke();
  ctx.strokeStyle = look.tokens['ink-2'];
  ctx.lineWidth = 1;
  if (part?.bodyForm === 'receptacle') {
    ctx.strokeRect(along * 0.55, -half + 3, along * 0.45 - 3, 2 * half - 6);
  } else if (part?.bodyForm === 'plug') {
    ctx.beginPath();
    ctx.rect(along, -half * 0.7, Math.max(3, 2.5 * s), half * 1.4);
    ctx.fillStyle = look.tokens.sheet;
    ctx.fill();
    ctx.stroke();
  }
  ctx.restore();
  // Names stand upright whichever way the connector points.
  const reach = c.alongMm / 2;
  const [x, y] = [pen.x(c.at.x + Math.cos(c.angle) * reach), pen.y(c.at.y + Math.sin(c.angle) * reach)];
  ctx.font = mono(look, clamp(4.2 * s, 9, 15), 600);
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.lineJoin = 'round';
  ctx.lineWidth = 3;
  ctx.strokeStyle = look.tokens.sheet;
  ctx.strokeText(record.designator, x, y + 0.5);
  ctx.fillStyle = look.tokens.ink;
  ctx.fillText(record.designator, x, y + 0.5);
}

function splice(pen: Pen, at: Point, name: string, lit: boolean): void {
  const { ctx, s, look } = pen;
  const r = clamp(2.2 * s, 3.5, 9);
  ctx.beginPath();
  ctx.arc(pen.x(at.x), pen.y(at.y), r + 3, 0, 7);
  ctx.fillStyle = lit ? look.tokens.copper : look.tokens.ink;
  ctx.fill();
  ctx.font = mono(look, clamp(3.4 * s, 9, 13), 600);
  ctx.textAlign = 'left';
  ctx.textBaseline = 'alphabetic';
  ctx.fillText(name, pen.x(at.x) + r + 7, pen.y(at.y) + r + 10);
}

function node(pen: Pen, at: Point, name: string, side: -1 | 1, lit: boolean): void {
  const { ctx, s, look } = pen;
  const [x, y] = [pen.x(at.x), pen.y(at.y)];
  const r = clamp(1.8 * s, 3.5, 7);
  ctx.beginPath();
  ctx.arc(x, y, r, 0, 7);
  ctx.fillStyle = look.tokens.paper;
  ctx.fill();
  ctx.lineWidth = lit ? 2.6 : 1.5;
  ctx.strokeStyle = lit ? look.tokens.copper : look.tokens.ink;
  ctx.stroke();
  if (s < 0.5 || pen.hasty) return;
  ctx.font = mono(look, clamp(3 * s, 9, 12));
  ctx.fillStyle = look.tokens['ink-2'];
  ctx.textAlign = side > 0 ? 'left' : 'right';
  ctx.textBaseline = 'alphabetic';
  ctx.fillText(name, x + side * (r + 3), y - r - 3);
}

/** A typed length stands underlined in ink; one measured from the drawing in brackets, lighter. */
function length(pen: Pen, item: SegmentItem, unit: 'mm' | 'in'): void {
  const { ctx, s, look } = pen;
  const typed = item.segment.lengthMm !== undefined;
  const size = clamp(3.2 * s, 9, 13);
  const value = lengthText(item.lengthMm, unit);
  const words = typed ? value : `(${value})`;
  ctx.font = text(look, size, typed ? 600 : 400);
  const width = ctx.measureText(words).width;
  if (item.drawnMm * s < width + 16) return;
  const { at, angle } = pointAlong(item, item.lengthMm / 2);
  const upright = Math.cos(angle) < -0.01 ? angle + Math.PI : angle;
  const lift = clamp(trunkMm(item.wires) * s, 1.5, 14) / 2 + clamp(3 * s, 5, 12);
  ctx.save();
  ctx.translate((at.x - pen.ox) * s, (at.y - pen.oy) * s);
  ctx.rotate(upright);
  ctx.textAlign = 'center';
  ctx.textBaseline = 'alphabetic';
  ctx.lineJoin = 'round';
  ctx.strokeStyle = look.tokens.paper;
  ctx.lineWidth = 4;
  ctx.strokeText(words, 0, -lift);
  ctx.fillStyle = typed ? look.tokens.ink : look.tokens['ink-2'];
  ctx.fillText(words, 0, -lift);
  if (typed) ctx.fillRect(-width / 2, -lift + 2.5, width, 1);
  ctx.font = mono(look, clamp(2.6 * s, 8, 11));
  ctx.fillStyle = look.tokens['ink-2'];
  if (s >= 0.8) ctx.fillText(item.segment.designator, 0, lift + size * 0.6);
  ctx.restore();
}
