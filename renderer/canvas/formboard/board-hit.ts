import { distance, inBox, type Box, type Point } from '@latchwork/core/base/point';
import type { Target } from '@latchwork/core/tools/tool';
import type { BoardScene } from './board-scene';

const REACH_PX = 8;

/** What lies under a point of the formboard: nodes first, then connectors, then segments. */
export function boardHit(scene: BoardScene, p: Point, pxPerMm: number): Target {
  const reach = REACH_PX / pxPerMm;
  const node = scene.nodes.find((n) => distance(n.at, p) <= reach);
  if (node) return { on: 'node', id: node.node.id };
  const connector = scene.connectors.find((c) => {
    const [dx, dy] = [p.x - c.at.x, p.y - c.at.y];
    const along = dx * Math.cos(c.angle) + dy * Math.sin(c.angle);
    const across = -dx * Math.sin(c.angle) + dy * Math.cos(c.angle);
    return along >= 0 && along <= c.alongMm && Math.abs(across) <= c.acrossMm / 2;
  });
  if (connector) return { on: 'pick', id: connector.use.resolved.connector.id };
  for (const s of scene.segments)
    for (let i = 1; i < s.points.length; i++)
      if (toLine(p, s.points[i - 1] as Point, s.points[i] as Point) <= Math.max(reach, 2))
        return { on: 'segment', id: s.segment.id };
  return { on: 'sheet' };
}

export const boardKeysInBox = (scene: BoardScene, box: Box): string[] => [
  ...scene.nodes.filter((n) => inBox(n.at, box)).map((n) => n.node.id),
  ...scene.segments.filter((s) => s.points.every((p) => inBox(p, box))).map((s) => s.segment.id),
];

function toLine(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length2));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}
