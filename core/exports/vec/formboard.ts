import { byId } from '../../base/by-id';
import type { Point } from '../../base/point';
import type { Segment } from '../../model/topology';
import { UniqueNames } from '../exchange/unique-names';
import { xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { nodeId, segmentId } from '../exchange/object-ids';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

/**
 * The formboard in the plane, mm. Here y grows downwards, as on a screen; there it grows upwards, as in drawings: y changes
 * its sign, so that the harness is not mirrored.
 */
export function formboardSpec(ctx: VecContext): XmlElement | undefined {
  const { nodes } = ctx.harness.project;
  if (nodes.length === 0) return undefined;
  const names = new UniqueNames();
  const segmentNames = new UniqueNames();
  const segments = ctx.harness.segments.map((s) => s.segment);
  const all = [...nodes.map((n) => n.position), ...segments.flatMap((s) => s.via ?? [])];
  const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  return node('Specification', { id: 'Formboard', type: 'BuildingBlockSpecification2D' }, [
    value('Identification', 'FORMBOARD'),
    refs('BaseUnit', ctx.units.id('mm')),
    node('BoundingBox', { id: 'Formboard_Box' }, [
      value('Height', extent(all.map((p) => p.y))),
      value('Width', extent(all.map((p) => p.x))),
    ]),
    nodes.map((n) => cartesian(pointOf(n.id), n.position)),
    segments.flatMap((s) => (s.via ?? []).map((p, i) => cartesian(viaId(s.id, i), p))),
    nodes.map((n) =>
      node('GeometryNode', { id: geometryNode(n.id) }, [
        value('Identification', names.give(n.designator, n.id)),
        refs('ReferenceNode', nodeId(n.id)),
        refs('CartesianPoint', pointOf(n.id)),
      ]),
    ),
    segments.map((s) => geometrySegment(ctx, s, segmentNames)),
  ]);
}

const pointOf = (id: string): string => xmlId('N', id, 'point');
const viaId = (id: string, i: number): string => xmlId('G', id, 'via', String(i + 1));
const geometryNode = (id: string): string => xmlId('N', id, 'drawn');

const cartesian = (id: string, { x, y }: Point): XmlElement =>
  node('CartesianPoint', { id }, [value('X', x), value('Y', y === 0 ? 0 : -y)]);

function geometrySegment(ctx: VecContext, s: Segment, names: UniqueNames): XmlElement {
  const id = xmlId('G', s.id, 'drawn');
  const nodes = byId(ctx.harness.project.nodes);
  const ends = [nodes.get(s.from), nodes.get(s.to)].flatMap((n) => (n ? [n.position] : []));
  const points = [...ends.slice(0, 1), ...(s.via ?? []), ...ends.slice(1)];
  const ids = [pointOf(s.from), ...(s.via ?? []).map((_, i) => viaId(s.id, i)), pointOf(s.to)];
  return node('GeometrySegment', { id }, [
    value('Identification', names.give(s.designator, s.id)),
    refs('ReferenceSegment', segmentId(s.id)),
    direction('StartVector', `${id}_start`, points[0], points[1]),
    direction('EndVector', `${id}_end`, points.at(-2), points.at(-1)),
    refs('EndNode', geometryNode(s.to)),
    refs('StartNode', geometryNode(s.from)),
    node('PathSegment', { id: `${id}_path` }, [refs('ControlPoint', ids)]),
  ]);
}

/** A vector of length 1 from point to point; (0, 0) where they are the same. */
function direction(name: string, id: string, from: Point | undefined, to: Point | undefined): XmlElement {
  const x = (to?.x ?? 0) - (from?.x ?? 0);
  const y = (from?.y ?? 0) - (to?.y ?? 0);
  const length = Math.hypot(x, y);
  const part = (v: number): number => (length === 0 ? 0 : Number((v / length).toFixed(6)) || 0);
  return node(name, { id }, [value('X', part(x)), value('Y', part(y))]);
}
