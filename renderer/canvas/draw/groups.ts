import type { DiagramScene } from '../scene/diagram-scene';
import { pointOn } from '../scene/curve';
import type { WireItem } from '../scene/items';
import { clamp, text, type Pen } from './pen';

/** From this zoom on groups are marked. */
const SHOW_PX_PER_MM = 1.6;
const TOGETHER_MM = 9;

/** Twisted wires carry crossed loops, shielded ones a dashed ring, near both ends; the group's name stands beside it. */
export function paintGroups(pen: Pen, scene: DiagramScene, skip: ReadonlySet<string>): void {
  if (pen.s < SHOW_PX_PER_MM || pen.hasty) return;
  for (const group of scene.harness.project.groups) {
    const wires = group.wires.flatMap((id): WireItem[] => {
      const item = scene.wires.byId.get(id);
      return item && !skip.has(id) ? [item] : [];
    });
    if (wires.length < 2) continue;
    // Wires that run apart are marked one by one.
    if (spread(wires, 0.5) > TOGETHER_MM) {
      wires.forEach((w, i) => mark(pen, [w], 0.3, group.form, i === 0 ? group.designator : ''));
      continue;
    }
    for (const share of [0.42, 0.58])
      mark(pen, wires, share, group.form, share < 0.5 ? group.designator : '');
  }
}

function spread(wires: readonly WireItem[], share: number): number {
  const points = wires.map((w) => pointOn(w.curve, share));
  const [first] = points;
  return first ? Math.max(...points.map((p) => Math.hypot(p.x - first.x, p.y - first.y))) : 0;
}

function mark(pen: Pen, wires: readonly WireItem[], share: number, form: string, name: string): void {
  const { ctx, s, look } = pen;
  const points = wires.map((w) => pointOn(w.curve, share));
  const mid = {
    x: points.reduce((a, p) => a + p.x, 0) / points.length,
    y: points.reduce((a, p) => a + p.y, 0) / points.length,
  };
  const half = Math.max(2.2, ...points.map((p) => Math.hypot(p.x - mid.x, p.y - mid.y) + 1.6));
  const first = wires[0] as WireItem;
  const [before, after] = [pointOn(first.curve, share - 0.01), pointOn(first.curve, share + 0.01)];
  ctx.save();
  ctx.translate((mid.x - pen.ox) * s, (mid.y - pen.oy) * s);
  ctx.rotate(Math.atan2(after.y - before.y, after.x - before.x));
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = 1.2;
  const h = half * s;
  const w = clamp(2.2 * s, 4, 16);
  ctx.beginPath();
  if (form.includes('shielded')) {
    ctx.setLineDash([3, 2]);
    ctx.ellipse(0, 0, w * 0.55, h, 0, 0, 7);
  } else if (form === 'bundled') ctx.ellipse(0, 0, w * 0.4, h, 0, 0, 7);
  ctx.stroke();
  ctx.setLineDash([]);
  if (form.includes('twisted')) {
    ctx.beginPath();
    ctx.moveTo(-w, -h);
    ctx.bezierCurveTo(0, -h, 0, h, w, h);
    ctx.moveTo(-w, h);
    ctx.bezierCurveTo(0, h, 0, -h, w, -h);
    ctx.stroke();
  }
  ctx.restore();
  if (!name || pen.detail === 'far') return;
  ctx.font = text(look, clamp(2.1 * s, 9, 11));
  ctx.fillStyle = look.tokens['ink-2'];
  ctx.textAlign = 'center';
  ctx.textBaseline = 'alphabetic';
  ctx.fillText(name, pen.x(mid.x), pen.y(mid.y - half) - 3);
}
