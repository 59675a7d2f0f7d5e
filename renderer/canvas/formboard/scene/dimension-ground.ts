import type { Harness } from '@latchwork/core/derive/harness';
import type { Datum } from '@latchwork/core/model/topology';
import type { BoardScene, BoardSegment } from './board-items';
import type { DimensionGround } from './dimension-items';

type Places = Pick<BoardScene, 'nodeById' | 'segmentById' | 'connectorById'>;

/** Dimensions are measured over the routes of the harness; a place that is dragged counts with its length as it would be. */
export function groundOf(harness: Harness, scene: Places): DimensionGround {
  return {
    nodeAt: (id) => scene.nodeById.get(id)?.at,
    segment: (id) => scene.segmentById.get(id),
    connector: (id) => scene.connectorById.get(id),
    lengthMm: (from, to) => lengthBetween(harness, scene, from, to),
  };
}

/** Nodes by which a datum is reached, with the way from it to there. */
function exits(d: Datum, scene: Places): readonly { readonly node: string; readonly mm: number }[] {
  if (d.at === 'node') return [{ node: d.node, mm: 0 }];
  if (d.at === 'connector') {
    const node = scene.connectorById.get(d.connector)?.node;
    return node ? [{ node, mm: 0 }] : [];
  }
  const s = scene.segmentById.get(d.station.segment);
  return s
    ? [
        { node: s.segment.from, mm: d.station.atMm },
        { node: s.segment.to, mm: s.lengthMm - d.station.atMm },
      ]
    : [];
}

function lengthBetween(harness: Harness, scene: Places, a: Datum, b: Datum): number | null {
  let best = Infinity;
  if (a.at === 'station' && b.at === 'station' && a.station.segment === b.station.segment)
    best = Math.abs(a.station.atMm - b.station.atMm);
  for (const from of exits(a, scene))
    for (const to of exits(b, scene)) {
      const way = harness.router.between(from.node, to.node);
      if (!way.found) continue;
      const mm = way.segments.reduce(
        (sum, id) => sum + (scene.segmentById.get(id) as BoardSegment).lengthMm,
        0,
      );
      best = Math.min(best, from.mm + mm + to.mm);
    }
  return Number.isFinite(best) ? best : null;
}
