import { inBox, type Box, type Point } from '@latchwork/core/base/point';
import { CAVITY_RADIUS_MM, TITLE_HEIGHT_MM } from '@latchwork/core/derive/symbol';
import type { Target } from '@latchwork/core/tools/tool';
import { distanceTo } from './curve';
import type { Badge } from './badges';
import type { HitIndex } from './hit-index';
import type { AreaItem, ConnectorItem, WireItem } from './items';

export interface HitContext {
  readonly index: HitIndex;
  readonly badges: readonly Badge[];
  readonly selection: ReadonlySet<string>;
  readonly pxPerMm: number;
}

/** Cavities can be hit from this zoom on; below it a connector is one thing. */
export const CAVITY_HIT_PX_PER_MM = 1.1;
/** How far beside a thing a press still means it, px. */
const REACH_PX = 6;
const BADGE_REACH_PX = 9;
/** Width of the border of an area that takes hold of it, px. */
const AREA_EDGE_PX = 6;

/** What lies under a point, the topmost first: badges, ends of selected wires, cavities, bodies, splices, wires, areas. */
export function hitAt(p: Point, { index, badges, selection, pxPerMm }: HitContext): Target {
  const reach = REACH_PX / pxPerMm;
  const badge = badges.find((b) => Math.hypot(b.at.x - p.x, b.at.y - p.y) <= BADGE_REACH_PX / pxPerMm);
  if (badge) return { on: 'badge', findings: badge.findings.map((f) => f.key), key: badge.key };
  const { scene } = index;
  const near = index.search(around(p, reach));
  const wires = near.filter((i): i is WireItem => i.is === 'wire');
  const end = wires.flatMap((w) => endsInReach(w, p, reach, selection))[0];
  if (end) return end;
  const connector = near.findLast((i): i is ConnectorItem => i.is === 'connector' && inBox(p, i));
  if (connector) return inConnector(connector, p, pxPerMm);
  const splice = near.find((i) => i.is === 'splice');
  if (splice) return { on: 'splice', id: splice.id };
  const wire = nearestWire(wires, p, reach);
  if (wire) return { on: 'wire', id: wire };
  const mate = scene.mates.find((m) => distanceTo(m.curve, p) <= reach);
  if (mate) return { on: 'mate', id: mate.id };
  const area = scene.areas.findLast((a) => inBox(p, a));
  if (!area) return { on: 'sheet' };
  return onEdge(area, p, AREA_EDGE_PX / pxPerMm)
    ? { on: 'equipment', id: area.id }
    : { on: 'sheet', area: area.id };
}

function inConnector(item: ConnectorItem, p: Point, pxPerMm: number): Target {
  const x = p.x - item.minX;
  const y = p.y - item.minY;
  if (pxPerMm >= CAVITY_HIT_PX_PER_MM && y > TITLE_HEIGHT_MM - 1) {
    const reach = CAVITY_RADIUS_MM + 0.9;
    const cavity = item.symbol.cavities.find((c) => Math.abs(c.x - x) <= reach && Math.abs(c.y - y) <= reach);
    if (cavity) return { on: 'cavity', connector: item.id, cavity: cavity.cavity };
  }
  return { on: 'connector', id: item.id };
}

function endsInReach(item: WireItem, p: Point, reach: number, selection: ReadonlySet<string>): Target[] {
  return ([0, 1] as const)
    .filter((end) => {
      const m = item.mouths[end];
      const free = item.wire.wire.ends[end].at === 'free';
      return (free || selection.has(item.id)) && Math.hypot(m.x - p.x, m.y - p.y) <= reach;
    })
    .map((end) => ({ on: 'wire-end', wire: item.id, end }));
}

function nearestWire(wires: readonly WireItem[], p: Point, reach: number): string | null {
  let best: string | null = null;
  let least = reach;
  for (const w of wires) {
    const d = distanceTo(w.curve, p);
    if (d < least) [best, least] = [w.id, d];
  }
  return best;
}

const around = (p: Point, by: number): Box => ({
  minX: p.x - by,
  minY: p.y - by,
  maxX: p.x + by,
  maxY: p.y + by,
});

/** The border of an area, and its title line inside the top edge. */
const onEdge = (a: AreaItem, p: Point, edge: number): boolean =>
  p.x - a.minX < edge || a.maxX - p.x < edge || a.maxY - p.y < edge || p.y - a.minY < Math.max(edge, 7);

/** Selection keys of all that lies wholly inside a box; areas and wires only when their whole outline does. */
export function keysInBox(index: HitIndex, box: Box): string[] {
  const inside = (b: Box): boolean =>
    b.minX >= box.minX && b.maxX <= box.maxX && b.minY >= box.minY && b.maxY <= box.maxY;
  return [
    ...index.scene.areas.filter(inside).map((a) => a.id),
    ...index
      .search(box)
      .filter(inside)
      .map((i) => i.id),
  ];
}
