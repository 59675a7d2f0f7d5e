import type { SegmentUse } from '../../derive/harness';
import { otherFields } from '../exchange/field-text';
import { PLACED_OF_NODE, PLACED_OF_SEGMENT } from '../exchange/placed-fields';
import { UniqueNames } from '../exchange/unique-names';
import { iriOf, xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { conductorId, nodeId, segmentId } from '../exchange/object-ids';
import type { VecContext } from './vec-context';
import { node, properties, refs, value } from './vec-values';

/** Nodes and the segments between them, with their lengths and tolerances. */
export function topologySpec(ctx: VecContext): XmlElement {
  const { nodes } = ctx.harness.project;
  const nodeNames = new UniqueNames();
  const segmentNames = new UniqueNames();
  const degree = new Map<string, number>();
  for (const { segment } of ctx.harness.segments)
    for (const end of [segment.from, segment.to]) degree.set(end, (degree.get(end) ?? 0) + 1);
  ctx.report.wrote('nodes', nodes.length);
  ctx.report.wrote('segments', ctx.harness.segments.length);
  return node('Specification', { id: 'Topology', type: 'TopologySpecification' }, [
    value('Identification', 'TOPOLOGY'),
    nodes.map((n) =>
      node('TopologyNode', { id: nodeId(n.id), iri: iriOf(n.id) }, [
        properties(nodeId(n.id), otherFields(n, PLACED_OF_NODE)),
        value('Identification', nodeNames.give(n.designator, n.id)),
        value('NodeType', (degree.get(n.id) ?? 0) > 1 ? 'Junction' : 'EndNode'),
      ]),
    ),
    ctx.harness.segments.map((use) => segmentElement(ctx, use, segmentNames)),
  ]);
}

function segmentElement(ctx: VecContext, { segment, lengthMm }: SegmentUse, names: UniqueNames): XmlElement {
  const id = segmentId(segment.id);
  return node('TopologySegment', { id, iri: iriOf(segment.id) }, [
    properties(id, [
      ...otherFields(segment, PLACED_OF_SEGMENT),
      ['lengthKind', segment.lengthMm === undefined ? 'drawn' : 'typed'],
    ]),
    value('Identification', names.give(segment.designator, segment.id)),
    value('Form', 'Circular'),
    refs('EndNode', nodeId(segment.to)),
    refs('StartNode', nodeId(segment.from)),
    node('LengthInformation', { id: `${id}_length` }, [
      ctx.values.number('Length', `${id}_length`, lengthMm, 'mm', {
        minus: segment.minusMm,
        plus: segment.plusMm,
      }),
      value('Classification', 'Designed'),
    ]),
  ]);
}

/** The way of every conductor that has one; a path that was chosen by hand is mandatory. */
export function routingSpec(ctx: VecContext): XmlElement {
  const names = new UniqueNames();
  return node('Specification', { id: 'Routing', type: 'RoutingSpecification' }, [
    value('Identification', 'ROUTINGS'),
    ctx.harness.wires.map(({ wire, route }) => {
      if (!route.found || route.segments.length === 0) return undefined;
      const id = xmlId('Route', wire.id);
      ctx.report.wrote('routes');
      return node('Routing', { id }, [
        value('Identification', names.give(wire.designator, wire.id)),
        refs('MandatorySegment', [...new Set(wire.path ?? [])].map(segmentId)),
        refs('RoutedElement', conductorId(wire.id)),
        node('Path', { id: `${id}_path` }, [refs('Segment', route.segments.map(segmentId))]),
      ]);
    }),
  ]);
}
