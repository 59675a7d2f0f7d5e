import { byId } from '../base/by-id';
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
  readonly connectors: ReadonlyMap<string, ResolvedConnector>;
  readonly wires: readonly ResolvedWire[];
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
  const through = wiresBySegment(inputs.wires, previous);
  const atNode =
    previous && before?.connectors === inputs.connectors
      ? previous.atNode
      : connectorsByNode(inputs.connectors);
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
      diametersMm: was && wires === was.wires ? was.diametersMm : diametersOf(wires, was),
      coverings: coverings.get(segment.id) ?? NO_COVERINGS,
      ties: ties.get(segment.id) ?? NO_TIES,
    };
    return reuse<SegmentUse>(was, next);
  };
  const uses = reuseList(previous?.list, project.segments.map(useOf));
  const bySegment =
    previous && uses === previous.list ? previous.bySegment : new Map(uses.map((u) => [u.segment.id, u]));
  return { inputs, through, atNode, coverings, ties, list: uses, bySegment };
}

const diametersOf = (
  wires: readonly ResolvedWire[],
  was: SegmentUse | undefined,
): SegmentUse['diametersMm'] =>
  reuseList(
    was?.diametersMm,
    bundleMembers(wires).map((m) => m.diameterMm),
  );

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

/** Wires through each segment. Where only wires on the same ways changed, only the lists of these ways are made anew. */
function wiresBySegment(
  wires: readonly ResolvedWire[],
  previous: SegmentTables | undefined,
): ReadonlyMap<string, readonly ResolvedWire[]> {
  const before = previous?.inputs.wires;
  if (previous && before === wires) return previous.through;
  const changed = before && exchanged(before, wires);
  if (previous && changed) {
    const through = new Map(previous.through);
    const touched = new Set([...changed.values()].flatMap(segmentsOf));
    for (const id of touched)
      through.set(
        id,
        (through.get(id) ?? NO_WIRES).map((w) => changed.get(w) ?? w),
      );
    return through;
  }
  const through = new Map<string, ResolvedWire[]>();
  for (const w of wires)
    for (const id of new Set(segmentsOf(w))) {
      const list = through.get(id);
      if (list) list.push(w);
      else through.set(id, [w]);
    }
  return through;
}

/** Old wires with what took their place; null when a wire came, went or takes another way. */
function exchanged(
  before: readonly ResolvedWire[],
  after: readonly ResolvedWire[],
): ReadonlyMap<ResolvedWire, ResolvedWire> | null {
  if (before.length !== after.length) return null;
  const out = new Map<ResolvedWire, ResolvedWire>();
  for (let i = 0; i < after.length; i++) {
    const [a, b] = [before[i]!, after[i]!];
    if (a === b) continue;
    if (a.wire.id !== b.wire.id || a.route !== b.route) return null;
    out.set(a, b);
  }
  return out;
}

const segmentsOf = (w: ResolvedWire): readonly string[] => (w.route.found ? w.route.segments : []);

function connectorsByNode(
  connectors: ReadonlyMap<string, ResolvedConnector>,
): ReadonlyMap<string, readonly ResolvedConnector[]> {
  const out = new Map<string, ResolvedConnector[]>();
  for (const c of connectors.values()) {
    if (c.connector.node === undefined) continue;
    const list = out.get(c.connector.node);
    if (list) list.push(c);
    else out.set(c.connector.node, [c]);
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
