import { CAVITY_RADIUS_MM } from '@latchwork/core/derive/symbol';
import type { Target } from '@latchwork/core/tools/tool';
import { moveAlong } from '../scene/curve';
import type { DiagramScene } from '../scene/diagram-scene';
import type { WireItem } from '../scene/items';
import { SPLICE_RADIUS_MM } from '../scene/mouths';
import { strokeMate } from './mates';
import { clamp, inMillimetres, type Pen } from './pen';
import { strokeWire, wireWidthPx } from './wires';

const HALO_PX = 7;

/** Copper around what is selected. Wires are drawn once more over their halo. */
export function paintSelection(
  pen: Pen,
  scene: DiagramScene,
  selection: ReadonlySet<string>,
  skip: ReadonlySet<string>,
): void {
  const { ctx, look } = pen;
  const wires: WireItem[] = [];
  for (const key of selection) {
    const [id = key, cavity] = key.split(':');
    if (skip.has(id)) continue;
    const wire = scene.wires.byId.get(id);
    if (wire) wires.push(wire);
    else if (cavity !== undefined) ringCavity(pen, scene, id, cavity, look.tokens.copper, 2.2);
    else outline(pen, scene, id, look.tokens.copper, 2);
  }
  paintSelectedWires(pen, wires);
  for (const w of wires)
    for (const m of w.mouths) handle(ctx, pen.x(m.x), pen.y(m.y), look.tokens.copper, look.tokens.paper);
}

export function paintSelectedWires(pen: Pen, wires: readonly WireItem[]): void {
  const { s, look } = pen;
  if (wires.length === 0) return;
  inMillimetres(pen, (ctx) => {
    ctx.lineCap = 'round';
    ctx.globalAlpha = 0.5;
    ctx.strokeStyle = look.tokens.copper;
    ctx.lineWidth = (wireWidthPx(s) + HALO_PX) / s;
    for (const w of wires) {
      ctx.beginPath();
      moveAlong(ctx, w.curve);
      ctx.stroke();
    }
    ctx.globalAlpha = 1;
    ctx.lineCap = 'butt';
    for (const w of wires) strokeWire(ctx, w, pen);
  });
}

/** What the pointer is on, a shade quieter than the selection. */
export function paintHover(pen: Pen, scene: DiagramScene, target: Target): void {
  const colour = pen.look.tokens['ink-2'];
  switch (target.on) {
    case 'cavity':
      return ringCavity(pen, scene, target.connector, target.cavity, colour, 1.4);
    case 'wire': {
      const wire = scene.wires.byId.get(target.id);
      if (wire)
        inMillimetres(pen, (ctx) => {
          ctx.globalAlpha = 0.28;
          ctx.strokeStyle = pen.look.tokens.ink;
          ctx.lineWidth = (wireWidthPx(pen.s) + 6) / pen.s;
          ctx.beginPath();
          moveAlong(ctx, wire.curve);
          ctx.stroke();
          ctx.globalAlpha = 1;
          strokeWire(ctx, wire, pen);
        });
      return;
    }
    case 'connector':
    case 'splice':
    case 'mate':
    case 'equipment':
      return outline(pen, scene, target.id, colour, 1);
    default:
  }
}

export function ringCavity(
  pen: Pen,
  scene: DiagramScene,
  connector: string,
  cavity: string,
  colour: string,
  width: number,
): void {
  const item = scene.connectorById.get(connector);
  const v = item?.symbol.byCavity.get(cavity);
  if (!item || !v) return;
  const { ctx, s } = pen;
  const half = (CAVITY_RADIUS_MM + 0.75) * s;
  const [x, y] = [pen.x(item.minX + v.x) + 0.5, pen.y(item.minY + v.y) + 0.5];
  ctx.strokeStyle = colour;
  ctx.lineWidth = width;
  ctx.beginPath();
  ctx.roundRect(x - half, y - half, 2 * half, 2 * half, pen.detail === 'near' ? half * 0.4 : half);
  ctx.stroke();
}

export function outline(pen: Pen, scene: DiagramScene, id: string, colour: string, width: number): void {
  const { ctx, s } = pen;
  ctx.strokeStyle = colour;
  ctx.lineWidth = width;
  const connector = scene.connectorById.get(id);
  if (connector) return frame(pen, connector, clamp(1.2 * s, 2, 7));
  const splice = scene.splices.find((x) => x.id === id);
  if (splice) {
    const { x, y } = splice.splice.position;
    ctx.beginPath();
    ctx.arc(pen.x(x), pen.y(y), clamp(SPLICE_RADIUS_MM * s, 2.5, 12) + 4, 0, 7);
    ctx.stroke();
    return;
  }
  const area = scene.areas.find((x) => x.id === id);
  if (area) return frame(pen, area, 1);
  const mate = scene.mates.find((x) => x.id === id);
  if (mate) return inMillimetres(pen, (c) => strokeMate(c, mate, pen, colour));
}

function frame(pen: Pen, b: { minX: number; minY: number; maxX: number; maxY: number }, out: number): void {
  const { ctx } = pen;
  const [x0, y0] = [pen.x(b.minX) - out, pen.y(b.minY) - out];
  ctx.beginPath();
  ctx.roundRect(x0 + 0.5, y0 + 0.5, pen.x(b.maxX) + out - x0, pen.y(b.maxY) + out - y0, 4);
  ctx.stroke();
}

function handle(ctx: CanvasRenderingContext2D, x: number, y: number, colour: string, paper: string): void {
  ctx.fillStyle = paper;
  ctx.strokeStyle = colour;
  ctx.lineWidth = 1.6;
  ctx.beginPath();
  ctx.rect(x - 3.5, y - 3.5, 7, 7);
  ctx.fill();
  ctx.stroke();
}
