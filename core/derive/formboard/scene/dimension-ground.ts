import type { Harness } from '../../harness';
import type { Datum } from '../../../model/topology';
import { lengthBetween } from '../dimension-values';
import type { BoardScene } from './board-items';
import type { DimensionGround } from './dimension-items';

type Places = Pick<BoardScene, 'nodeById' | 'segmentById' | 'connectorById'>;

/** Dimensions are measured along the harness; a segment that is dragged counts with its length as it would be. */
export function groundOf(harness: Harness, scene: Places): DimensionGround {
  return {
    nodeAt: (id) => scene.nodeById.get(id)?.at,
    segment: (id) => scene.segmentById.get(id),
    connector: (id) => scene.connectorById.get(id),
    lengthMm: (from, to) => lengthNow(harness, scene, from, to),
  };
}

function lengthNow(harness: Harness, scene: Places, from: Datum, to: Datum): number | null {
  const { valueMm, extents } = lengthBetween(harness, from, to);
  if (valueMm === undefined) return null;
  let changeMm = 0;
  for (const e of extents) {
    const s = scene.segmentById.get(e.segment);
    // A stretch of a segment keeps its stations; one from end to end has the new length.
    if (s && e.fromMm === 0 && e.toMm === s.use?.lengthMm) changeMm += s.lengthMm - e.toMm;
  }
  return valueMm + changeMm;
}
