import { byId } from '../../base/by-id';
import type { Point } from '../../base/point';
import type { SegmentUse } from '../../derive/harness';
import { coveringExtents } from '../../derive/covering-extents';
import type { Segment, Station } from '../../model/topology';
import { fieldText, otherFields } from '../exchange/field-text';
import { nodeId, pieceIds, segmentId } from '../exchange/object-ids';
import { PLACED_OF_NODE, PLACED_OF_SEGMENT } from '../exchange/placed-fields';
import { xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import type { KblContext } from './kbl-context';
import { element, field, processing, references, value } from './kbl-values';
import { connectionId } from './kbl-wires';

/** Nodes, segments with what lies on them, and the way of each connection. */
export function addTopology(ctx: KblContext): void {
  const { project } = ctx.harness;
  const nodes = new Map(project.nodes.map((n) => [n.id, n]));
  for (const n of project.nodes) {
    const id = nodeId(n.id);
    ctx.container.add(point(`${id}_point`, n.position));
    ctx.container.add(
      element('Node', { id }, [
        value('Id', ctx.names('nodes').give(n.designator, n.id)),
        value('Cartesian_point', `${id}_point`),
        references('Referenced_components', ctx.atNode.get(n.id) ?? []),
        processing(id, otherFields(n, PLACED_OF_NODE)),
      ]),
    );
  }
  const fixings = fixingsBySegment(ctx);
  const protections = protectionsBySegment(ctx);
  for (const use of ctx.harness.segments) {
    const { id } = use.segment;
    ctx.container.add(segmentElement(ctx, use, fixings.get(id) ?? [], protections.get(id) ?? []));
    for (const [i, p] of (use.segment.via ?? []).entries()) ctx.container.add(point(viaId(id, i), p));
  }
  ctx.report.wrote('nodes', nodes.size);
  ctx.report.wrote('segments', ctx.harness.segments.length);
  for (const { wire, route } of ctx.harness.wires) {
    if (!route.found || route.segments.length === 0) continue;
    ctx.report.wrote('routes');
    const id = xmlId('Route', wire.id);
    ctx.container.add(
      element('Routing', { id }, [
        value('Routed_wire', connectionId(wire.id)),
        references('Segments', route.segments.map(segmentId)),
        processing(id, wire.path ? [['path', 'chosen by hand']] : []),
      ]),
    );
  }
}

const viaId = (segment: string, i: number): string => xmlId('G', segment, 'via', String(i + 1));

/** Here y grows downwards, as on a screen; there upwards, as in drawings: y changes its sign, so that nothing is mirrored. */
const point = (id: string, { x, y }: Point): XmlElement =>
  element('Cartesian_point', { id }, [value('Coordinates', x), value('Coordinates', y === 0 ? 0 : -y)]);

function segmentElement(
  ctx: KblContext,
  { segment, lengthMm }: SegmentUse,
  fixings: readonly XmlElement[],
  protections: readonly XmlElement[],
): XmlElement {
  const id = segmentId(segment.id);
  return element('Segment', { id }, [
    value('Id', ctx.names('segments').give(segment.designator, segment.id)),
    ctx.units.number('Virtual_length', id, lengthMm, 'mm'),
    ctx.units.number('Physical_length', id, lengthMm, 'mm'),
    value('Form', 'circular'),
    value('End_node', nodeId(segment.to)),
    value('Start_node', nodeId(segment.from)),
    curve(segment),
    fixings,
    processing(id, [
      ...otherFields(segment, PLACED_OF_SEGMENT),
      ...field('lengthKind', segment.lengthMm === undefined ? 'drawn' : 'typed'),
      ...field('plusMm', segment.plusMm === undefined ? undefined : fieldText(segment.plusMm)),
      ...field('minusMm', segment.minusMm === undefined ? undefined : fieldText(segment.minusMm)),
    ]),
    protections,
  ]);
}

/** Straight runs over the points that it is led through. */
function curve({ id, from, to, via = [] }: Segment): XmlElement | undefined {
  if (via.length === 0) return undefined;
  return element('Center_curve', { id: `${segmentId(id)}_curve` }, [
    value('Degree', 1),
    references('Control_points', [
      `${nodeId(from)}_point`,
      ...via.map((_, i) => viaId(id, i)),
      `${nodeId(to)}_point`,
    ]),
  ]);
}

type BySegment = Map<string, XmlElement[]>;

const push = (map: BySegment, segment: string, e: XmlElement): unknown =>
  map.set(segment, [...(map.get(segment) ?? []), e]);

/** A fraction of a length, to the micrometre on a metre. */
const fraction = (mm: number, lengthMm: number): number =>
  lengthMm === 0 ? 0 : Number(Math.min(1, mm / lengthMm).toFixed(9));

/** Ties, clamps, grommets and labels at their stations. The direction on the bundle is not modelled: across it. */
function fixingsBySegment(ctx: KblContext): BySegment {
  const { project, router } = ctx.harness;
  const segments = byId(project.segments);
  const out: BySegment = new Map();
  const place = (piece: string, { segment, atMm }: Station): void => {
    const s = segments.get(segment);
    if (!s) return;
    const lengthMm = router.lengthMmOf(s);
    const id = `${piece}_placed`;
    const mm = Math.min(atMm, lengthMm);
    const made = element('Fixing_assignment', { id }, [
      value('Location', fraction(mm, lengthMm)),
      ctx.units.number('Absolute_location', id, mm, 'mm'),
      value('Orientation', 0),
      value('Orientation', 1),
      value('Fixing', piece),
    ]);
    push(out, segment, made);
  };
  for (const t of project.ties) place(pieceIds.tie(t.id), t.station);
  for (const f of project.fixings) place(pieceIds.fixing(f.id), f.station);
  for (const l of project.labels) if (l.on.at === 'station') place(pieceIds.label(l.id), l.on.station);
  return out;
}

/** Coverings by the stretches that they lie on. KBL 2.4 has no order of layers: the layer stands at the occurrence. */
function protectionsBySegment(ctx: KblContext): BySegment {
  const { project, router } = ctx.harness;
  const segments = byId(project.segments);
  const out: BySegment = new Map();
  for (const c of project.coverings) {
    const extents = coveringExtents(c, segments, router);
    if (extents.length === 0)
      ctx.report.lose(
        c.designator ?? 'covering',
        'no way joins its two stations: it has no place in the file',
        {
          type: 'covering',
          id: c.id,
        },
      );
    const along = extents.filter((e) => e.toMm > e.fromMm);
    for (const [i, e] of (along.length > 0 ? along : extents.slice(0, 1)).entries()) {
      const s = segments.get(e.segment);
      if (!s) continue;
      const lengthMm = router.lengthMmOf(s);
      const piece = pieceIds.covering(c.id);
      const id = `${piece}_area_${i + 1}`;
      const area = element('Protection_area', { id }, [
        value('Start_location', fraction(e.fromMm, lengthMm)),
        ctx.units.number('Absolute_start_location', id, e.fromMm, 'mm'),
        value('End_location', fraction(e.toMm, lengthMm)),
        ctx.units.number('Absolute_end_location', id, e.toMm, 'mm'),
        value('Associated_protection', piece),
      ]);
      push(out, e.segment, area);
    }
  }
  return out;
}
