import { byId } from '../../base/by-id';
import { coveringExtents, type Extent } from '../../derive/covering-extents';
import type { Covering } from '../../model/topology';
import { placeOfStation, type StationPlace } from '../exchange/station-place';
import { UniqueNames } from '../exchange/unique-names';
import type { XmlElement } from '../xml/xml';
import { dimensions } from './dimensions';
import { location } from './location';
import { locationId, pieceIds, placementId, segmentId } from '../exchange/object-ids';
import { placeableId } from './piece';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

/** Where the pieces are on the topology, and the dimensions between places. */
export function placementSpec(ctx: VecContext): XmlElement {
  const names = new UniqueNames();
  const placements = [...points(ctx, names), ...runs(ctx, names)];
  return node('Specification', { id: 'Placements', type: 'PlacementSpecification' }, [
    value('Identification', 'PLACEMENTS'),
    dimensions(ctx, names),
    placements,
  ]);
}

/** Connectors, splices and lugs at their nodes; ties, clamps, grommets and labels at their stations. */
function points(ctx: VecContext, names: UniqueNames): XmlElement[] {
  const { project } = ctx.harness;
  const at: [piece: string, name: string, place: StationPlace][] = [];
  const atNode = (piece: string, name: string, id: string | undefined): void => {
    if (id !== undefined) at.push([piece, name, { at: 'node', node: id }]);
  };
  for (const c of project.connectors) atNode(pieceIds.connector(c.id), c.designator, c.node);
  for (const j of ctx.junctions) {
    const [end] = j.ends;
    if (j.at === 'splice') atNode(pieceIds.splice(j.splice.id), j.name, j.splice.node);
    else if (j.at === 'terminal' && end)
      atNode(pieceIds.terminal(end.wire.wire.id, end.index), j.name, j.node);
  }
  const { harness } = ctx;
  for (const t of project.ties) at.push([pieceIds.tie(t.id), 'tie', placeOfStation(harness, t.station)]);
  for (const f of project.fixings)
    at.push([pieceIds.fixing(f.id), f.designator ?? 'fixing', placeOfStation(harness, f.station)]);
  for (const l of project.labels)
    if (l.on.at === 'station') at.push([pieceIds.label(l.id), l.text, placeOfStation(harness, l.on.station)]);
  return at.map(([piece, name, place]) => {
    const unique = names.give(name, piece);
    return node('Placement', { id: placementId(piece), type: 'OnPointPlacement' }, [
      value('Identification', unique),
      refs('PlacedElement', placeableId(piece)),
      location(ctx, 'Location', locationId(piece), names.give(`${unique} place`, piece), place),
    ]);
  });
}

/** Coverings from place to place over the segments between, each on top of what lies under it. */
function runs(ctx: VecContext, names: UniqueNames): XmlElement[] {
  const segments = byId(ctx.harness.project.segments);
  const laid = ctx.harness.project.coverings.map((covering) => ({
    covering,
    extents: coveringExtents(covering, segments, ctx.harness.router),
  }));
  return laid.flatMap(({ covering, extents }) => {
    const id = pieceIds.covering(covering.id);
    const designator = covering.designator ?? 'covering';
    if (extents.length === 0) {
      ctx.report.lose(designator, 'no way joins its two stations: it has no place in the file', {
        type: 'covering',
        id: covering.id,
      });
      return [];
    }
    const unique = names.give(designator, id);
    const [from, to] = endsOfRun(ctx, covering, extents);
    const under = laid.filter((other) => isUnder(other, { covering, extents }));
    return node('Placement', { id: placementId(id), type: 'OnWayPlacement' }, [
      value('Identification', unique),
      refs(
        'IsOnTopOf',
        under.map((u) => placementId(pieceIds.covering(u.covering.id))),
      ),
      refs('PlacedElement', placeableId(id)),
      location(ctx, 'EndLocation', locationId(id, 'end'), names.give(`${unique} end`, id), to),
      node('Path', { id: `${id}_path` }, [refs('Segment', pathOf(extents))]),
      location(ctx, 'StartLocation', locationId(id, 'start'), names.give(`${unique} start`, id), from),
    ]);
  });
}

/** Both ends in the order of the path: within one segment the smaller station comes first. */
function endsOfRun(
  ctx: VecContext,
  covering: Covering,
  extents: readonly Extent[],
): readonly [StationPlace, StationPlace] {
  const turned = extents.length === 1 && covering.from.atMm > covering.to.atMm;
  const from = placeOfStation(ctx.harness, covering.from);
  const to = placeOfStation(ctx.harness, covering.to);
  return turned ? [to, from] : [from, to];
}

/** Segments that the run goes along, without those that it only touches; its own one where it has no length. */
function pathOf(extents: readonly Extent[]): string[] {
  const along = extents.filter((e) => e.toMm > e.fromMm);
  return (along.length > 0 ? along : extents.slice(0, 1)).map((e) => segmentId(e.segment));
}

interface Laid {
  readonly covering: Covering;
  readonly extents: readonly Extent[];
}

const isUnder = (a: Laid, b: Laid): boolean =>
  a.covering.layer < b.covering.layer &&
  a.extents.some((x) =>
    b.extents.some((y) => x.segment === y.segment && x.fromMm < y.toMm && y.fromMm < x.toMm),
  );
