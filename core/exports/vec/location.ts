import { nodeId, segmentId } from '../exchange/object-ids';
import type { StationPlace } from '../exchange/station-place';
import type { XmlElement } from '../xml/xml';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

/** A place of the topology as a location of the given element name. */
export function location(
  ctx: VecContext,
  element: string,
  id: string,
  name: string,
  place: StationPlace,
): XmlElement {
  if (place.at === 'node')
    return node(element, { id, type: 'NodeLocation' }, [
      value('Identification', name),
      refs('ReferencedNode', nodeId(place.node)),
    ]);
  return node(element, { id, type: 'SegmentLocation' }, [
    value('Identification', name),
    ctx.values.number('Offset', id, place.mm, 'mm'),
    value('Anchor', 'FromStartNode'),
    refs('ReferencedSegment', segmentId(place.segment)),
  ]);
}
