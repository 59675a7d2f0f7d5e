import { byId } from '../base/by-id';
import { listDifference } from '../base/list-difference';
import type { PlacedMap } from '../base/placed-map';
import { reuse, reuseList } from '../base/same-fields';
import { partOfKind, type Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { bundleMembers } from './bundle';
import { coveringExtents } from './covering-extents';
import type { Segment } from '../model/topology';
import type { CoveringUse, ResolvedConnector, ResolvedWire, SegmentUse, TieUse } from './harness';
import type { Router } from './route';

/** What the uses are made from. The maps are made anew only when their sources changed. */
export interface SegmentInputs {
  readonly project: Project;
  readonly parts: ReadonlyMap<string, Part>;
  readonly connectors: readonly ResolvedConnector[];
  readonly wires: readonly ResolvedWire[];
  readonly wireById: PlacedMap<ResolvedWire>;
  readonly router: Router;
}

/** Tables that the next derivation starts from. */
export interface SegmentTables {
  readonly inputs: SegmentInputs;
  readonly through: ReadonlyMap<string, readonly ResolvedWire[]>;
  readonly atNode: ReadonlyMap<string, readonly ResolvedConnector[]>;
  readonly coverings: ReadonlyMap<string, readonly CoveringUse[]>;
  readonly ties: ReadonlyMap<string, readonly TieUse[]>;
  readonly list: readonly SegmentUse[];
  readonly bySegment: ReadonlyMap<string, SegmentUse>;
}

const NO_WIRES: readonly ResolvedWire[] = [];
const NO_CONNECTORS: readonly ResolvedConnector[] = [];
const NO_COVERINGS: readonly CoveringUse[] = [];
const NO_TIES: readonly TieUse[] = [];

/** The uses of all segments, in their order. An untouched segment keeps its use's identity. */
export function segmentTables(inputs: SegmentInputs, previous: SegmentTables | undefined): SegmentTables {
  if (previous && sameInputs(inputs, previous.inputs)) return { ...previous, inputs };
  const { project, router } = inputs;
  const before = previous?.inputs;
  const sameGround = previous && before?.router === router && before.parts === inputs.parts;
  const through = wiresBySegment(inputs, previous);
  const atNode = connectorsByNode(inputs.connectors, previous);
  const coverings =
    sameGround && before?.project.coverings === project.coverings
      ? previous.coverings
      : coveringsBySegment(inputs, previous);
  const ties =
    sameGround && before?.project.ties === project.ties ? previous.ties : tiesBySegment(inputs, previous);
  const nodes = byId(project.nodes);

  const useOf = (segment: Segment): SegmentUse => {
    const was = previous?.bySegment.get(segment.id);
    const found = through.get(segment.id) ?? NO_WIRES;
    const wires = was && found === was.wires ? found : reuseList(was?.wires, found);
    const next = {
      segment,
      lengthMm: router.lengthMmOf(segment),
      fromNode: nodes.get(segment.from),
      toNode: nodes.get(segment.to),
      fromConnectors: atNode.get(segment.from) ?? NO_CONNECTORS,
      toConnectors: atNode.get(segment.to) ?? NO_CONNECTORS,
      wires,
      diametersMm: diametersOf(wires, was),
      coverings: coverings.get(segment.id) ?? NO_COVERINGS,
      ties: ties.get(segment.id) ?? NO_TIES,
    };
    return reuse<SegmentUse>(was, next);
  };
  const isStill = sameGround && coverings === previous.coverings && ties === previous.ties;
  const list = reuseList(
    previous?.list,
    project.segments.map((segment, i) => {
      const was = isStill ? previous.list[i] : undefined;
      const untouched =
        was?.segment === segment &&
        (through.get(segment.id) ?? NO_WIRES) === was.wires &&
        (atNode.get(segment.from) ?? NO_CONNECTORS) === was.fromConnectors &&
        (atNode.get(segment.to) ?? NO_CONNECTORS) === was.toConnectors;
      return untouched ? was : useOf(segment);
    }),
  );
  const bySegment = byId(project.segments).beside(list);
  return { inputs, through, atNode, coverings, ties, list, bySegment };
}

function diametersOf(wires: readonly ResolvedWire[], was: SegmentUse | undefined): SegmentUse['diametersMm'] {
  if (was && (wires === was.wires || sameCircles(wires, was.wires))) return was.diametersMm;
  return reuseList(
    was?.diametersMm,
    bundleMembers(wires).map((m) => m.diameterMm),
  );
}

/** Whether wires have the same cross-section since what it is made of is the same. */
function sameCircles(a: readonly ResolvedWire[], b: readonly ResolvedWire[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) {
    const [v, w] = [a[i]!, b[i]!];
    if (v === w) continue;
    if (v.wire.id !== w.wire.id || v.part !== w.part || v.group !== w.group) return false;
    if (v.conductor !== w.conductor || v.wire.core?.cable !== w.wire.core?.cable) return false;
  }
  return true;
}

function sameInputs(a: SegmentInputs, b: SegmentInputs): boolean {
  const fields = ['nodes', 'segments', 'coverings', 'ties'] as const;
  return (
    a.wires === b.wires &&
    a.connectors === b.connectors &&
    a.parts === b.parts &&
    a.router === b.router &&
    fields.every((f) => a.project[f] === b.project[f])
  );
}

/** Wires through each segment, in wire order. Only the lists of ways that changed wires take or took are made anew. */
function wiresBySegment(
  { wires, wireById }: SegmentInputs,
  previous: SegmentTables | undefined,
): ReadonlyMap<string, readonly ResolvedWire[]> {
  const before = previous?.inputs.wires;
  if (previous && before === wires) return previous.through;
  const { gone, fresh } = before ? listDifference(before, wires) : { gone: NO_WIRES, fresh: wires };
  const [left, came] = [bySegments(gone), bySegments(fresh)];
  const through = new Map<string, readonly ResolvedWire[]>(previous?.through);
  if (through.size === 0) return came;
  const placeOf = (w: ResolvedWire): number => wireById.placeOf(w.wire.id) ?? 0;
  for (const id of new Set([...left.keys(), ...came.keys()])) {
    const out = new Set(left.get(id));
    const stay = (through.get(id) ?? NO_WIRES).filter((w) => !out.has(w));
    const list = [...stay, ...(came.get(id) ?? NO_WIRES)].map((wire) => ({ wire, at: placeOf(wire) }));
    list.sort((a, b) => a.at - b.at);
    if (list.length > 0)
      through.set(id, list.map((x) => x.wire)); // prettier-ignore
    else through.delete(id);
  }
  return through;
}

function bySegments(wires: readonly ResolvedWire[]): ReadonlyMap<string, readonly ResolvedWire[]> {
  const out = new Map<string, ResolvedWire[]>();
  for (const w of wires)
    for (const id of segmentsOf(w)) {
      const list = out.get(id);
      if (!list) out.set(id, [w]);
      else if (list.at(-1) !== w) list.push(w);
    }
  return out;
}

const segmentsOf = (w: ResolvedWire): readonly string[] => (w.route.found ? w.route.segments : []);

/** Connectors at each node, in project order. Only the lists of nodes at which one changed are made anew. */
function connectorsByNode(
  connectors: readonly ResolvedConnector[],
  previous: SegmentTables | undefined,
): ReadonlyMap<string, readonly ResolvedConnector[]> {
  const before = previous?.inputs.connectors;
  if (previous && before === connectors) return previous.atNode;
  const touched = new Set<string>();
  if (before)
    for (const list of Object.values(listDifference(before, connectors)))
      for (const c of list) if (c.connector.node !== undefined) touched.add(c.connector.node);
  const anew = new Map<string, ResolvedConnector[]>();
  for (const c of connectors) {
    const { node } = c.connector;
    if (node === undefined || (before && !touched.has(node))) continue;
    const list = anew.get(node);
    if (list) list.push(c);
    else anew.set(node, [c]);
  }
  if (!previous) return anew;
  const out = new Map(previous.atNode);
  for (const id of touched) {
    const list = anew.get(id);
    if (list) out.set(id, list);
    else out.delete(id);
  }
  return out;
}

function coveringsBySegment(
  { project, parts, router }: SegmentInputs,
  previous: SegmentTables | undefined,
): ReadonlyMap<string, readonly CoveringUse[]> {
  const segments = byId(project.segments);
  const out = new Map<string, CoveringUse[]>();
  for (const covering of project.coverings)
    for (const { segment, fromMm, toMm } of coveringExtents(covering, segments, router)) {
      const was = previous?.bySegment
        .get(segment)
        ?.coverings.find((c) => c.covering.id === covering.id && c.fromMm === fromMm);
      const part = partOfKind(parts.get(covering.part), 'covering');
      const use = reuse<CoveringUse>(was, { covering, part, fromMm, toMm });
      const list = out.get(segment);
      if (list) list.push(use);
      else out.set(segment, [use]);
    }
  for (const list of out.values()) list.sort((a, b) => a.covering.layer - b.covering.layer);
  return out;
}

function tiesBySegment(
  { project, parts, router }: SegmentInputs,
  previous: SegmentTables | undefined,
): ReadonlyMap<string, readonly TieUse[]> {
  const segments = byId(project.segments);
  const out = new Map<string, TieUse[]>();
  for (const tie of project.ties) {
    const segment = segments.get(tie.station.segment);
    if (!segment) continue;
    const was = previous?.bySegment.get(segment.id)?.ties.find((t) => t.tie.id === tie.id);
    const atMm = Math.min(tie.station.atMm, router.lengthMmOf(segment));
    const use = reuse<TieUse>(was, { tie, part: partOfKind(parts.get(tie.part), 'tie'), atMm });
    const list = out.get(segment.id);
    if (list) list.push(use);
    else out.set(segment.id, [use]);
  }
  for (const list of out.values()) list.sort((a, b) => a.atMm - b.atMm);
  return out;
}
