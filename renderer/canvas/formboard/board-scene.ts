import { byId } from '@latchwork/core/base/by-id';
import { boxAround, distance, type Box, type Point } from '@latchwork/core/base/point';
import type { ConnectorUse, Harness } from '@latchwork/core/derive/harness';
import type { Covering, Node } from '@latchwork/core/model/topology';
import type { Splice } from '@latchwork/core/model/wire';
import { coveredRuns } from './covered-runs';
import { lengthOf, pointAlong, type SegmentItem } from './segment-item';

/** A connector at its node, turned away from the segments that end there. */
export interface BoardConnector {
  readonly use: ConnectorUse;
  readonly at: Point;
  /** Direction in which it points away from the harness, radians. */
  readonly angle: number;
  readonly alongMm: number;
  readonly acrossMm: number;
}

export interface CoveringItem {
  readonly covering: Covering;
  readonly runs: readonly (readonly Point[])[];
}

/** The formboard at true scale, ready to be drawn and hit. */
export interface BoardScene {
  readonly harness: Harness;
  /** With the side on which a name has room: away from the connectors that stand there. */
  readonly nodes: readonly { readonly node: Node; readonly at: Point; readonly nameSide: -1 | 1 }[];
  readonly segments: readonly SegmentItem[];
  readonly connectors: readonly BoardConnector[];
  readonly splices: readonly { readonly splice: Splice; readonly at: Point }[];
  readonly coverings: readonly CoveringItem[];
  readonly ties: readonly { readonly id: string; readonly at: Point; readonly angle: number }[];
}

/** `shifts` draws nodes away from their places while they are moved. */
export function buildBoardScene(
  harness: Harness,
  shifts: ReadonlyMap<string, Point> = new Map(),
): BoardScene {
  const { project } = harness;
  const place = (n: Node): Point => {
    const by = shifts.get(n.id);
    return by ? { x: n.position.x + by.x, y: n.position.y + by.y } : n.position;
  };
  const places = project.nodes.map((node) => ({ node, at: place(node) }));
  const at = new Map(places.map((n) => [n.node.id, n.at]));
  const counts = wiresPerSegment(harness);
  const segments = project.segments.flatMap((segment): SegmentItem[] => {
    const [from, to] = [at.get(segment.from), at.get(segment.to)];
    if (!from || !to) return [];
    const points = [from, ...(segment.via ?? []), to];
    const drawnMm = lengthOf(points);
    return [
      { segment, points, drawnMm, lengthMm: segment.lengthMm ?? drawnMm, wires: counts.get(segment.id) ?? 0 },
    ];
  });
  const bySegment = new Map(segments.map((s) => [s.segment.id, s]));
  const connectors = placeConnectors(harness, at, segments);
  const facing = new Map(connectors.map((c) => [c.use.resolved.connector.node, Math.cos(c.angle)]));
  return {
    harness,
    nodes: places.map((n) => ({ ...n, nameSide: (facing.get(n.node.id) ?? -1) > 0 ? -1 : 1 })),
    segments,
    connectors,
    splices: project.splices.flatMap((splice) => {
      const p = at.get(splice.node ?? '');
      return p ? [{ splice, at: p }] : [];
    }),
    coverings: project.coverings.map((covering) => ({
      covering,
      runs: coveredRuns(covering, bySegment, harness.router),
    })),
    ties: project.ties.flatMap((tie) => {
      const s = bySegment.get(tie.station.segment);
      return s ? [{ id: tie.id, ...pointAlong(s, tie.station.atMm) }] : [];
    }),
  };
}

function wiresPerSegment(harness: Harness): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const w of harness.wires)
    if (w.route.found) for (const id of w.route.segments) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
}

const ASSUMED_PITCH_MM = 3;
const GAP_MM = 4;

function placeConnectors(
  harness: Harness,
  at: ReadonlyMap<string, Point>,
  segments: readonly SegmentItem[],
): readonly BoardConnector[] {
  const byNode = new Map<string, ConnectorUse[]>();
  for (const use of harness.connectors) {
    const { node } = use.resolved.connector;
    if (!node) continue;
    const list = byNode.get(node);
    if (list) list.push(use);
    else byNode.set(node, [use]);
  }
  const out: BoardConnector[] = [];
  for (const [node, uses] of byNode) {
    const p = at.get(node);
    if (!p) continue;
    const angle = awayFrom(p, node, segments);
    const sizes = uses.map(sizeOf);
    const total = sizes.reduce((sum, s) => sum + s.acrossMm, 0) + GAP_MM * (sizes.length - 1);
    let side = -total / 2;
    uses.forEach((use, i) => {
      const size = sizes[i] as { alongMm: number; acrossMm: number };
      const off = side + size.acrossMm / 2;
      side += size.acrossMm + GAP_MM;
      out.push({
        use,
        angle,
        ...size,
        at: { x: p.x - Math.sin(angle) * off, y: p.y + Math.cos(angle) * off },
      });
    });
  }
  return out;
}

/** Outline of a housing seen from above, from pitch and ways (mm): its width over the ways, and a usual depth. */
function sizeOf({ resolved: { part } }: ConnectorUse): { alongMm: number; acrossMm: number } {
  const columns = part ? Math.ceil(part.ways / Math.min(part.rows ?? 1, part.ways)) : 2;
  return { alongMm: 18, acrossMm: columns * (part?.pitchMm ?? ASSUMED_PITCH_MM) + 4 };
}

function awayFrom(p: Point, node: string, segments: readonly SegmentItem[]): number {
  let [x, y] = [0, 0];
  for (const s of segments) {
    const here = s.segment.from === node ? s.points[1] : s.segment.to === node ? s.points.at(-2) : undefined;
    if (!here) continue;
    const d = distance(p, here) || 1;
    x += (p.x - here.x) / d;
    y += (p.y - here.y) / d;
  }
  return x === 0 && y === 0 ? 0 : Math.atan2(y, x);
}

export function boardBounds(scene: BoardScene): Box | null {
  const box = boxAround(
    [...scene.nodes.map((n) => n.at), ...scene.segments.flatMap((s) => s.points)].map((p) => ({
      minX: p.x,
      minY: p.y,
      maxX: p.x,
      maxY: p.y,
    })),
  );
  return box && { minX: box.minX - 40, minY: box.minY - 40, maxX: box.maxX + 40, maxY: box.maxY + 40 };
}

/** Nodes and segments that a selection key stands for: a wire's way, a connector's node. */
export function litBy(scene: BoardScene, selection: ReadonlySet<string>): ReadonlySet<string> {
  const lit = new Set<string>();
  const coverings = byId(scene.harness.project.coverings);
  for (const key of selection) {
    const id = key.split(':')[0] as string;
    const wire = scene.harness.wireById.get(id);
    if (wire?.route.found) for (const s of wire.route.segments) lit.add(s);
    if (wire) for (const end of [wire.from, wire.to]) if (end.node) lit.add(end.node);
    const covering = coverings.get(id);
    if (covering) lit.add(covering.id);
    lit.add(id);
  }
  return lit;
}
