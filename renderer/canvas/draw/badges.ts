import { boxesMeet } from '@latchwork/core/base/point';
import { MARK_PATHS, UNKNOWN_RING, type MarkKind } from '../../ui/severity-mark';
import { worse, type Badge } from '../scene/badges';
import type { DiagramScene } from '../scene/diagram-scene';
import { clamp, text, type Pen } from './pen';

const RING_MM = 2.9;
/** Not shown on wires from afar. */
const QUIET: ReadonlySet<MarkKind> = new Set(['unknown', 'note']);

const shapes = new Map<MarkKind, Path2D>();
function shapeOf(kind: MarkKind): Path2D {
  let path = shapes.get(kind);
  if (!path) shapes.set(kind, (path = new Path2D(kind === 'unknown' ? UNKNOWN_RING : MARK_PATHS[kind])));
  return path;
}

/** Findings at their objects: a shape, and a hairline to the very cavity or wire. Far, one per connector. */
export function paintBadges(pen: Pen, badges: readonly Badge[], scene: DiagramScene): void {
  if (pen.hasty) return;
  const inView = badges.filter((b) => boxesMeet(reach(b), pen.view));
  if (pen.detail === 'far') return paintFar(pen, inView, scene);
  for (const b of inView) if (b.at !== b.to) hairlineTo(pen, b);
  const size = clamp(3.6 * pen.s, 10, 16);
  for (const b of inView) paintMark(pen, b.kind, pen.x(b.at.x), pen.y(b.at.y), size, b.findings.length);
}

/** The worst at each connector, and what matters at wires. */
function paintFar(pen: Pen, badges: readonly Badge[], scene: DiagramScene): void {
  const worst = new Map<string, MarkKind>();
  for (const b of badges) {
    const id = b.key.split(':')[0] as string;
    if (scene.connectorById.has(id)) worst.set(id, worse(worst.get(id) ?? 'note', b.kind));
    else if (!QUIET.has(b.kind)) paintMark(pen, b.kind, pen.x(b.at.x), pen.y(b.at.y), 10);
  }
  for (const [id, kind] of worst) {
    const item = scene.connectorById.get(id);
    if (item) paintMark(pen, kind, pen.x(item.maxX), pen.y(item.minY), 12);
  }
}

const reach = (b: Badge) => ({
  minX: Math.min(b.at.x, b.to.x) - 3,
  minY: Math.min(b.at.y, b.to.y) - 3,
  maxX: Math.max(b.at.x, b.to.x) + 3,
  maxY: Math.max(b.at.y, b.to.y) + 3,
});

function hairlineTo(pen: Pen, b: Badge): void {
  const { ctx, s, look } = pen;
  const [x, y] = [(b.to.x - pen.ox) * s, (b.to.y - pen.oy) * s];
  const r = b.connector ? RING_MM * s : 3;
  const [fx, fy] = [(b.at.x - pen.ox) * s, (b.at.y - pen.oy) * s];
  const away = Math.hypot(fx - x, fy - y) || 1;
  ctx.strokeStyle = look.tokens[b.kind];
  ctx.lineWidth = 0.9;
  ctx.beginPath();
  ctx.moveTo(fx, fy);
  ctx.lineTo(x + ((fx - x) / away) * r, y + ((fy - y) / away) * r);
  ctx.stroke();
  ctx.beginPath();
  if (b.kind === 'unknown') ctx.setLineDash([2.5, 2]);
  ctx.lineWidth = b.connector ? 1.4 : 1;
  ctx.arc(x, y, r, 0, 7);
  ctx.stroke();
  ctx.setLineDash([]);
}

/** The shape of a severity, set off from what lies under it by a rim of paper. */
export function paintMark(pen: Pen, kind: MarkKind, x: number, y: number, size: number, count = 1): void {
  const { ctx, look } = pen;
  const path = shapeOf(kind);
  ctx.save();
  ctx.translate(x - size / 2, y - size / 2);
  ctx.scale(size / 16, size / 16);
  ctx.lineJoin = 'round';
  if (kind === 'unknown') {
    ctx.fillStyle = look.tokens.paper;
    ctx.beginPath();
    ctx.arc(8, 8, 8.4, 0, 7);
    ctx.fill();
    ctx.strokeStyle = look.tokens.unknown;
    ctx.lineWidth = 1.8;
    ctx.stroke(path);
    ctx.font = text(look, 11, 600);
    ctx.textAlign = 'center';
    ctx.textBaseline = 'alphabetic';
    ctx.fillStyle = look.tokens.unknown;
    ctx.fillText('?', 8, 12);
  } else {
    ctx.strokeStyle = look.tokens.paper;
    ctx.lineWidth = 3.2;
    ctx.stroke(path);
    ctx.fillStyle = look.tokens[kind];
    ctx.fill(path);
  }
  ctx.restore();
  if (count < 2 || pen.detail !== 'near') return;
  ctx.font = text(look, 10, 600);
  ctx.fillStyle = look.tokens[kind];
  ctx.textAlign = 'left';
  ctx.textBaseline = 'alphabetic';
  ctx.fillText(String(count), x + size / 2, y - size / 4);
}
