import type { Point } from '@latchwork/core/base/point';
import { symbolOf } from '@latchwork/core/derive/symbol';
import { isMatingHalf, type Part } from '@latchwork/core/model/parts/part';
import { boxOf } from '@latchwork/core/tools/box-select';
import type { KeyWire } from '@latchwork/core/tools/key-wire';
import { snapped } from '@latchwork/core/tools/snap';
import type { Gesture } from '@latchwork/core/tools/step-tool';
import type { Target } from '@latchwork/core/tools/tool';
import { wireEndAt, type WireEndTarget } from '@latchwork/core/tools/wire-target';
import { curveBox, moveAlong } from '../scene/curve';
import type { DiagramScene } from '../scene/diagram-scene';
import type { MateItem } from '../scene/items';
import { mateCurve } from '../scene/mate-curve';
import { singleCurve, type Mouth } from '../scene/ribbon';
import { layRibbon } from '../scene/wire-items';
import { paintArea } from './areas';
import { paintMovedConnectors } from './connectors';
import { strokeMate } from './mates';
import { inMillimetres, type Pen } from './pen';
import { outline, ringCavity } from './selection';
import { paintSplice } from './splices';
import { strokeWire } from './wires';

/** The gesture under way, drawn as it would be written on release. */
export function paintGesture(
  pen: Pen,
  scene: DiagramScene,
  gesture: Gesture,
  lifted: ReadonlySet<string>,
): void {
  switch (gesture.is) {
    case 'box-select':
    case 'place-equipment':
      return paintFrame(pen, gesture.from, gesture.to);
    case 'move':
      if (gesture.moving) paintMove(pen, scene, gesture, lifted);
      return;
    case 'draw-wire': {
      if (!gesture.drawing) return;
      const from = mouthAt(scene, gesture.from, gesture.at);
      if (from) paintLoose(pen, scene, from, gesture.over, gesture.at);
      return;
    }
    case 'reconnect': {
      const wire = scene.wires.byId.get(gesture.wire);
      if (wire && gesture.drawing)
        paintLoose(pen, scene, wire.mouths[gesture.end === 0 ? 1 : 0], gesture.over, gesture.at);
      return;
    }
    case 'pan':
    case 'draw-segment':
      return;
  }
}

/** A wire drawn from the keyboard, with its target ringed. */
export function paintKeyWire(pen: Pen, scene: DiagramScene, { from, to }: KeyWire): void {
  const a = mouthAt(scene, { at: 'cavity', ...from }, { x: 0, y: 0 });
  const over: Target = { on: 'cavity', ...to };
  if (a) paintLoose(pen, scene, a, over, a);
}

/** The outline of a part in hand, where a click would place it. */
export function paintInHand(pen: Pen, part: Part, at: Point, snap: boolean): void {
  if (!isMatingHalf(part)) return;
  const { widthMm, heightMm } = symbolOf(part, { exit: 'right', view: 'mating-face' });
  const p = snapped({ x: at.x - widthMm / 2, y: at.y - heightMm / 2 }, snap);
  paintFrame(pen, p, { x: p.x + widthMm, y: p.y + heightMm });
}

function paintFrame(pen: Pen, from: Point, to: Point): void {
  const { ctx, look } = pen;
  const b = boxOf({ from, to });
  const [x, y] = [pen.x(b.minX), pen.y(b.minY)];
  const [w, h] = [pen.x(b.maxX) - x, pen.y(b.maxY) - y];
  ctx.fillStyle = look.tokens.copper;
  ctx.globalAlpha = 0.08;
  ctx.fillRect(x, y, w, h);
  ctx.globalAlpha = 1;
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 1;
  ctx.strokeRect(x + 0.5, y + 0.5, w, h);
}

const MANY_WIRES = 12;

type MoveGesture = Extract<Gesture, { is: 'move' }>;

function paintMove(pen: Pen, scene: DiagramScene, g: MoveGesture, lifted: ReadonlySet<string>): void {
  const { x, y } = g.by;
  const moved = new Set(g.objects.map((o) => o.id));
  for (const c of scene.connectors) if (lifted.has(c.id)) moved.add(c.id);
  const shifts = new Map([...moved].map((id) => [id, g.by]));
  for (const a of scene.areas) if (moved.has(a.id)) paintArea(pen, a, x, y);
  const wires = scene.wires.list.filter((w) => lifted.has(w.id)).map((w) => w.wire);
  // Many wires on the move are drawn without casing and stripes, to keep up with the pointer.
  const light: Pen = wires.length > MANY_WIRES ? { ...pen, detail: 'far' } : pen;
  inMillimetres(pen, (ctx) => {
    for (const w of layRibbon(wires, shifts)) strokeWire(ctx, w, light);
    for (const m of scene.mates) if (lifted.has(m.id)) strokeMate(ctx, movedMate(scene, m, moved, g.by), pen);
  });
  const list = scene.connectors.filter((c) => moved.has(c.id));
  paintMovedConnectors(pen, list, x, y);
  for (const s of scene.splices) if (moved.has(s.id)) paintSplice(pen, s, x, y);
  const { ctx, look } = pen;
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 2;
  for (const c of list) {
    const [x0, y0] = [pen.x(c.minX + x) - 4, pen.y(c.minY + y) - 4];
    ctx.beginPath();
    ctx.roundRect(x0 + 0.5, y0 + 0.5, pen.x(c.maxX + x) + 4 - x0, pen.y(c.maxY + y) + 4 - y0, 4);
    ctx.stroke();
  }
  if (g.offer) paintOffer(pen, scene, g.offer.partner, g.offer.reason, list[0], g.by);
}

/** A half that is near enough to be plugged in: both are framed, in copper if they go together. */
function paintOffer(
  pen: Pen,
  scene: DiagramScene,
  partner: string,
  reason: string | null,
  held: DiagramScene['connectors'][number] | undefined,
  by: Point,
): void {
  const { ctx, look } = pen;
  const colour = reason === null ? look.tokens.copper : look.tokens.critical;
  if (reason !== null) ctx.setLineDash([5, 3]);
  outline(pen, scene, partner, colour, 2.4);
  ctx.setLineDash([]);
  const other = scene.connectorById.get(partner);
  if (!held || !other) return;
  const box = {
    minX: held.minX + by.x,
    minY: held.minY + by.y,
    maxX: held.maxX + by.x,
    maxY: held.maxY + by.y,
  };
  const curve = mateCurve(box, other);
  inMillimetres(pen, (c) => {
    c.beginPath();
    moveAlong(c, curve);
    c.lineWidth = 3 / pen.s;
    c.strokeStyle = colour;
    if (reason !== null) c.setLineDash([4 / pen.s, 3 / pen.s]);
    c.stroke();
  });
}

function movedMate(scene: DiagramScene, m: MateItem, moved: ReadonlySet<string>, by: Point): MateItem {
  const box = (id: string) => {
    const c = scene.connectorById.get(id);
    if (!c || !moved.has(id)) return c;
    return { minX: c.minX + by.x, minY: c.minY + by.y, maxX: c.maxX + by.x, maxY: c.maxY + by.y };
  };
  const [a, b] = [box(m.mate.mate.a), box(m.mate.mate.b)];
  if (!a || !b) return m;
  const curve = mateCurve(a, b);
  return { ...m, curve, ...curveBox(curve) };
}

/** A wire from a fixed mouth to what the pointer is over, or to the pointer. */
function paintLoose(pen: Pen, scene: DiagramScene, from: Mouth, over: Target, at: Point): void {
  const { look } = pen;
  const end = wireEndAt(over, at);
  const to: Mouth = (end && mouthAt(scene, end, from)) ?? { ...at, side: from.x >= at.x ? 1 : -1 };
  const start = { ...from };
  inMillimetres(pen, (ctx) => {
    ctx.beginPath();
    moveAlong(ctx, singleCurve(start, to));
    ctx.lineWidth = 4.5 / pen.s;
    ctx.strokeStyle = look.tokens.paper;
    ctx.stroke();
    ctx.lineWidth = 2 / pen.s;
    ctx.strokeStyle = look.tokens.copper;
    ctx.setLineDash(end && end.at !== 'free' ? [] : [6 / pen.s, 4 / pen.s]);
    ctx.stroke();
  });
  if (over.on === 'cavity') ringCavity(pen, scene, over.connector, over.cavity, look.tokens.copper, 2.2);
  if (over.on === 'splice') outline(pen, scene, over.id, look.tokens.copper, 2);
}

function mouthAt(scene: DiagramScene, end: WireEndTarget, other: Point): Mouth | null {
  if (end.at === 'free') return { ...end.position, side: other.x >= end.position.x ? 1 : -1 };
  if (end.at === 'splice') {
    const p = scene.splices.find((s) => s.id === end.splice)?.splice.position;
    return p ? { ...p, side: other.x >= p.x ? 1 : -1 } : null;
  }
  const item = scene.connectorById.get(end.connector);
  const v = item?.symbol.byCavity.get(end.cavity);
  return item && v ? { x: v.side > 0 ? item.maxX : item.minX, y: item.minY + v.y, side: v.side } : null;
}
