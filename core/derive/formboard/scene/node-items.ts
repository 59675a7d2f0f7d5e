import { distance, type Point } from '../../../base/point';
import { awayFromRunsDeg } from '../board-angle';
import { bodyOutline, type BodyOutline } from '../body-outline';
import type { ConnectorUse } from '../../harness';
import type { Node } from '../../../model/topology';
import type { BoardConnector, BoardNode, BoardSegment } from './board-items';

/** Room between connectors that share a node, mm. */
const GAP_MM = 4;

/** The connectors of a node side by side, turned away from the segments that end there unless they say otherwise. */
export function connectorsAt(
  node: string,
  at: Point,
  uses: readonly ConnectorUse[],
  segments: readonly BoardSegment[],
  anglesDeg?: ReadonlyMap<string, number>,
): readonly BoardConnector[] {
  const away = awayFrom(node, segments);
  const sizes = uses.map((use) => bodyOutline(use.resolved.part));
  const total = sizes.reduce((sum, s) => sum + s.acrossMm, 0) + GAP_MM * (sizes.length - 1);
  let side = -total / 2;
  return uses.map((use, i) => {
    const size = sizes[i] as BodyOutline;
    const off = side + size.acrossMm / 2;
    side += size.acrossMm + GAP_MM;
    const { id, formboardAngleDeg } = use.resolved.connector;
    const deg = anglesDeg?.get(id) ?? formboardAngleDeg;
    return {
      id,
      use,
      node,
      ...size,
      angle: deg === undefined ? away : (deg * Math.PI) / 180,
      at: { x: at.x - Math.sin(away) * off, y: at.y + Math.cos(away) * off },
    };
  });
}

/** Direction in which a segment leaves a node, radians. */
function leaves(node: string, s: BoardSegment): number | null {
  const { points } = s;
  const [a, b] = s.segment.from === node ? [points[0], points[1]] : [points.at(-1), points.at(-2)];
  return a && b && distance(a, b) > 0 ? Math.atan2(b.y - a.y, b.x - a.x) : null;
}

/** Direction away from the runs that end at a node, radians. */
export function awayFrom(node: string, runs: readonly BoardSegment[]): number {
  const ends = new Map<string, Node>();
  for (const { segment: s, path } of runs)
    for (const [id, position] of [
      [s.from, path.start],
      [s.to, path.end],
    ] as const)
      ends.set(id, { id, designator: '', position });
  const deg = awayFromRunsDeg(
    node,
    runs.map((r) => r.segment),
    ends,
  );
  return (deg * Math.PI) / 180;
}

const STEPS = 16;
/** A connector takes up more of the circle around its node than a segment, radians on either side. */
const CONNECTOR_HALF = 1.2;
/** Names read best above and to the right; of two places with the same room the one nearer to that is taken. */
const LIKED = -Math.PI / 4;

export function nodeItem(
  node: Node,
  at: Point,
  segments: readonly BoardSegment[],
  connectors: readonly BoardConnector[],
): BoardNode {
  const taken: { angle: number; half: number }[] = [];
  for (const s of segments) {
    const angle = leaves(node.id, s);
    if (angle !== null) taken.push({ angle, half: 0 });
  }
  for (const c of connectors) taken.push({ angle: c.angle, half: CONNECTOR_HALF });
  const nameAngle = roomiest(taken);
  return {
    id: node.id,
    node,
    at,
    nameAngle,
    spareAngle: roomiest([...taken, { angle: nameAngle, half: 0.4 }]),
  };
}

/** The direction with most room to what is taken. */
function roomiest(taken: readonly { readonly angle: number; readonly half: number }[]): number {
  let best = { angle: LIKED, worth: -Infinity };
  for (let i = 0; i < STEPS; i++) {
    const angle = LIKED + (i * 2 * Math.PI) / STEPS;
    const room = Math.min(Math.PI / 2, ...taken.map((t) => apart(angle, t.angle) - t.half));
    const worth = room - 0.05 * apart(angle, LIKED);
    if (worth > best.worth) best = { angle, worth };
  }
  return best.angle;
}

/** The smaller angle between two directions, radians. */
export function apart(a: number, b: number): number {
  const d = Math.abs(a - b) % (2 * Math.PI);
  return d > Math.PI ? 2 * Math.PI - d : d;
}
