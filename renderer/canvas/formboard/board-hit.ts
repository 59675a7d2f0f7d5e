import { distance, inBox, type Box, type Point } from '@latchwork/core/base/point';
import { stationNear } from '@latchwork/core/derive/formboard/segment-path';
import type { BoardPlace, Target } from '@latchwork/core/tools/tool';
import { placeOfStation } from '@latchwork/core/derive/formboard/segment-path';
import { lanesShow, wireInLane } from './draw/lanes';
import type { BoardScene, BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';

const REACH_PX = 8;
const THING_PX = 5;

/** Coordinates of a point in the frame of something that stands at a place with an angle: along, and to the right. */
function inFrame(p: Point, at: Point, angle: number): readonly [number, number] {
  const [dx, dy] = [p.x - at.x, p.y - at.y];
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [dx * cos + dy * sin, -dx * sin + dy * cos];
}

/** What lies under a point of the formboard, the smallest first: bends, nodes, things, connectors, dimensions, runs. */
export function boardHit(
  scene: BoardScene,
  p: Point,
  pxPerMm: number,
  selection: ReadonlySet<string> = new Set(),
): Target {
  const reach = REACH_PX / pxPerMm;
  return (
    viaAt(scene, p, reach, selection) ??
    jointAt(scene, p, reach) ??
    thingAt(scene, p, THING_PX / pxPerMm) ??
    connectorAt(scene, p) ??
    coveringEndAt(scene, p, reach * 0.75) ??
    dimensionAt(scene, p, reach * 0.6) ??
    runAt(scene, p, reach, pxPerMm, selection) ?? { on: 'sheet' }
  );
}

/** Bends show, and can be held, on selected segments. */
function viaAt(scene: BoardScene, p: Point, reach: number, selection: ReadonlySet<string>): Target | null {
  for (const id of selection) {
    const via = scene.segmentById.get(id)?.segment.via ?? [];
    const index = via.findIndex((v) => distance(v, p) <= reach);
    if (index >= 0) return { on: 'via', id, index };
  }
  return null;
}

/** A node, or beside its ring the splice that sits there. */
function jointAt(scene: BoardScene, p: Point, reach: number): Target | null {
  const node = scene.nodes.find((n) => distance(n.at, p) <= reach);
  if (node) return { on: 'node', id: node.id };
  for (const s of scene.splices) {
    const [along, across] = inFrame(p, s.at, s.angle);
    if (Math.abs(along) <= Math.max(5, reach * 1.6) && Math.abs(across) <= Math.max(2, reach * 0.7))
      return { on: 'pick', id: s.id };
  }
  return null;
}

function thingAt(scene: BoardScene, p: Point, more: number): Target | null {
  for (const t of scene.things) {
    if (distance(t.at, p) > t.aroundMm + 12 + more) continue;
    const [along, across] = inFrame(p, t.at, t.angle);
    const half = t.aroundMm / 2 + 1 + more;
    if (Math.abs(along) > 1 + more || across < -half || across > half + (t.kind === 'clamp' ? 6 : 0))
      continue;
    if (!t.slides) return { on: 'pick', id: t.id };
    return { on: t.kind === 'clamp' || t.kind === 'grommet' ? 'fixing' : t.kind, id: t.id };
  }
  return null;
}

function connectorAt(scene: BoardScene, p: Point): Target | null {
  for (const c of scene.connectors) {
    const [along, across] = inFrame(p, c.at, c.angle);
    if (along >= 0 && along <= c.alongMm && Math.abs(across) <= c.acrossMm / 2)
      return { on: 'turning', id: c.id };
  }
  const end = scene.freeEnds.find((e) => {
    const [along, across] = inFrame(p, e.at, e.angle);
    return along >= 0 && along <= 16 && Math.abs(across) <= 2;
  });
  return end ? { on: 'pick', id: end.wire.wire.id } : null;
}

function coveringEndAt(scene: BoardScene, p: Point, reach: number): Target | null {
  // The outermost is drawn last and lies on top.
  for (const c of [...scene.coverings].reverse())
    for (const e of c.ends) {
      const [along, across] = inFrame(p, e.at, e.angle);
      if (Math.abs(along) <= reach && Math.abs(across) <= c.outsideMm / 2 + reach / 2)
        return { on: 'covering', id: c.id, end: e.end };
    }
  return null;
}

function dimensionAt(scene: BoardScene, p: Point, reach: number): Target | null {
  for (const d of scene.dimensions) {
    if (!inBox(p, d)) continue;
    for (const m of d.measures)
      if (toLine(p, m.from, m.to) <= reach * 1.6) return { on: 'dimension', id: d.id };
  }
  return null;
}

function toLine(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const d2 = dx * dx + dy * dy;
  const t = d2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / d2));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

function runAt(
  scene: BoardScene,
  p: Point,
  reach: number,
  pxPerMm: number,
  selection: ReadonlySet<string>,
): Target | null {
  const found = nearestRun(scene, p, Infinity);
  if (!found) return null;
  const { run, atMm, at, awayMm } = found;
  if (awayMm > Math.max(reach, run.outsideMm / 2)) return null;
  const over = (run.use?.coverings ?? []).filter((c) => c.fromMm <= atMm && c.toMm >= atMm).reverse();
  const held = over.find((c) => selection.has(c.covering.id));
  if (held) return { on: 'covering', id: held.covering.id, end: null, atMm };
  if (over.length === 0 && lanesShow({ s: pxPerMm }, run)) {
    const { angle } = placeOfStation(run.path, run.lengthMm, atMm);
    const [, aside] = inFrame(p, at, angle);
    const wire = wireInLane(run, aside);
    if (wire && awayMm <= run.widthMm / 2 + 0.2)
      return { on: 'segment', id: run.id, atMm, wire: wire.wire.id };
  }
  const above = selection.size === 1 && selection.has(run.id) ? over[0]?.covering.id : undefined;
  return { on: 'segment', id: run.id, atMm, above };
}

interface Run {
  readonly run: BoardSegment;
  readonly atMm: number;
  readonly at: Point;
  readonly awayMm: number;
}

function nearestRun(scene: BoardScene, p: Point, reachMm: number): Run | null {
  let best: Run | null = null;
  for (const run of scene.segments) {
    const least = best?.awayMm ?? reachMm;
    if (Number.isFinite(least) ? !near(run, p, least) : !inBox(p, run)) continue;
    const { atMm, at, distanceMm } = stationNear(run.path, run.lengthMm, p);
    if (distanceMm <= least) best = { run, atMm, at, awayMm: distanceMm };
  }
  return best;
}

const near = (b: Box, p: Point, by: number): boolean =>
  p.x >= b.minX - by && p.x <= b.maxX + by && p.y >= b.minY - by && p.y <= b.maxY + by;

/** The place on a run nearest to a point, for tools; null beyond `reachMm`. */
export function placeNear(scene: BoardScene, p: Point, reachMm: number): BoardPlace | null {
  const found = nearestRun(scene, p, reachMm);
  if (!found) return null;
  const { run, atMm, at } = found;
  return { segment: run.id, atMm, at, angle: placeOfStation(run.path, run.lengthMm, atMm).angle };
}

export const boardKeysInBox = (scene: BoardScene, box: Box): string[] => [
  ...scene.nodes.filter((n) => inBox(n.at, box)).map((n) => n.id),
  ...scene.segments.filter((s) => s.points.every((p) => inBox(p, box))).map((s) => s.id),
  ...scene.things.filter((t) => t.slides && inBox(t.at, box)).map((t) => t.id),
];
