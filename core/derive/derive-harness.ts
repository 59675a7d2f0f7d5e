import { byId } from '../base/by-id';
import { reuse, reuseList } from '../base/same-fields';
import type { Mate } from '../model/connector';
import type { Project } from '../model/project';
import type { Wire } from '../model/wire';
import { connectorUseOf, endsByConnector, patchEnds } from './cavity-uses';
import { changedIds } from './changed-ids';
import type {
  ConnectorUse,
  EndInCavity,
  Harness,
  ResolvedConnector,
  ResolvedMate,
  ResolvedWire,
} from './harness';
import { mateMapOf } from './mate-map';
import { netTable, type NetTable } from './net-table';
import { resolveConnectors } from './resolve-connectors';
import { resolveWire, wireLookups } from './resolve-wires';
import { isTwisted } from './twist';
import { createRouter } from './route';
import { lazySupplies, type LazySupplies } from './supply-table';
import { segmentTables, type SegmentTables } from './segment-uses';

/** Inner tables that the next derivation starts from; not for readers of the harness. */
interface Carried {
  readonly resolved: ReadonlyMap<string, ResolvedConnector>;
  readonly ends: ReadonlyMap<string, readonly EndInCavity[]>;
  readonly nets: NetTable;
  readonly segments: SegmentTables;
  readonly supplies: LazySupplies;
}

const carried = new WeakMap<Harness, Carried>();

/**
 * Resolves a project. Given the harness of the state before, it does again only what an edit touched: objects that
 * stay the same keep their identity. The result never depends on `previous`, only its cost does.
 */
export function deriveHarness(project: Project, previous?: Harness): Harness {
  if (previous?.project === project) return previous;
  const before = previous?.project;
  const old = previous && carried.get(previous);
  const parts = byId(project.parts);

  const sameConnectors =
    before !== undefined &&
    before.connectors === project.connectors &&
    before.parts === project.parts &&
    before.equipment === project.equipment;
  const resolved =
    old && sameConnectors ? old.resolved : resolveConnectors(project, parts, old?.resolved ?? new Map());
  const router =
    previous && before?.nodes === project.nodes && before.segments === project.segments
      ? previous.router
      : createRouter(project.nodes, project.segments);

  const moved = old ? changedConnectors(old.resolved, resolved) : null;
  const wires = resolveWires(project, previous, resolved, router, moved);
  const ends = old && previous ? patchEnds(old.ends, previous.wires, wires) : endsByConnector(wires);
  const connectors = useConnectors(project, previous, resolved, ends, old);
  const connectorById =
    previous && connectors === previous.connectors
      ? previous.connectorById
      : new Map(connectors.map((c) => [c.resolved.connector.id, c]));
  const mates = resolveMates(project, previous, connectorById);
  const netList = netTable({ wires, connectors, mates }, old?.nets);
  const nets = netList.list;
  const segments = segmentTables({ project, parts, connectors: resolved, wires, router }, old?.segments);
  const supplies = lazySupplies({ project, nets, connectors, connectorById, mates }, old?.supplies);

  const harness: Harness = {
    project,
    parts,
    connectors,
    connectorById,
    wires,
    wireById:
      previous && wires === previous.wires ? previous.wireById : new Map(wires.map((w) => [w.wire.id, w])),
    mates,
    nets,
    segments: segments.list,
    get supplies() {
      return supplies.get();
    },
    router,
  };
  carried.set(harness, { resolved, ends, nets: netList, segments, supplies });
  return harness;
}

/** Collections that a resolved wire reads besides the wires themselves. */
const WIRE_INPUTS = [
  'parts',
  'contacts',
  'signals',
  'splices',
  'cables',
  'groups',
  'nodes',
  'segments',
] as const;

function resolveWires(
  project: Project,
  previous: Harness | undefined,
  connectors: ReadonlyMap<string, ResolvedConnector>,
  router: Harness['router'],
  moved: ReadonlySet<string> | null,
): readonly ResolvedWire[] {
  const before = previous?.project;
  const look = wireLookups(project, byId(project.parts), connectors, router);
  const changed = before && changedIds(before.wires, project.wires);
  const sameInputs = moved && before && WIRE_INPUTS.every((c) => onlyAdded(before[c], project[c]));
  const out: ResolvedWire[] = [];
  for (const [i, wire] of project.wires.entries()) {
    const guess = previous?.wires[i];
    const was = guess?.wire.id === wire.id ? guess : previous?.wireById.get(wire.id);
    const group = look.groupOfWire.get(wire.id);
    // The take-up of a twisted wire hangs on the diameters of those it is twisted with.
    const twinChanged = isTwisted(group) && group.wires.some((id) => changed?.has(id));
    const untouched =
      was &&
      sameInputs &&
      !changed?.has(wire.id) &&
      !twinChanged &&
      was.group === group &&
      (moved.size === 0 || !endsAt(wire, moved));
    out.push(untouched ? was : resolveWire(wire, look, was));
  }
  return reuseList(previous?.wires, out);
}

/** Ids of connectors that resolve to another object than before, or no longer at all. */
function changedConnectors(
  before: ReadonlyMap<string, ResolvedConnector>,
  after: ReadonlyMap<string, ResolvedConnector>,
): ReadonlySet<string> {
  const out = new Set<string>();
  if (before === after) return out;
  for (const [id, c] of after) if (before.get(id) !== c) out.add(id);
  for (const id of before.keys()) if (!after.has(id)) out.add(id);
  return out;
}

const endsAt = (wire: Wire, connectors: ReadonlySet<string>): boolean =>
  wire.ends.some((e) => e.at === 'cavity' && connectors.has(e.connector));

/** True when every object that was there still is, the very same; a new one at the end is named by no old wire. */
function onlyAdded(before: readonly unknown[], after: readonly unknown[]): boolean {
  if (before === after) return true;
  if (after.length < before.length) return false;
  for (let i = 0; i < before.length; i++) if (before[i] !== after[i]) return false;
  return true;
}

function useConnectors(
  project: Project,
  previous: Harness | undefined,
  resolved: ReadonlyMap<string, ResolvedConnector>,
  ends: ReadonlyMap<string, readonly EndInCavity[]>,
  old: Carried | undefined,
): readonly ConnectorUse[] {
  const before = previous?.project;
  const matesOf = new Map<string, Mate[]>();
  for (const m of project.mates)
    for (const id of new Set([m.a, m.b])) {
      const list = matesOf.get(id);
      if (list) list.push(m);
      else matesOf.set(id, [m]);
    }
  const look = {
    parts: byId(project.parts),
    contacts: byId(project.contacts),
    signals: byId(project.signals),
  };
  const sameLookups =
    before?.parts === project.parts &&
    before.contacts === project.contacts &&
    before.signals === project.signals;
  const list = project.connectors.map((connector) => {
    const self = resolved.get(connector.id)!;
    const mine = ends.get(connector.id) ?? NO_ENDS;
    const mates = matesOf.get(connector.id) ?? NO_MATES;
    const was = previous?.connectorById.get(connector.id);
    const untouched =
      was &&
      sameLookups &&
      was.resolved === self &&
      sameEnds(old?.ends.get(connector.id) ?? NO_ENDS, mine) &&
      sameList(was.mates, mates);
    return untouched ? was : connectorUseOf(self, mine, mates, look, was);
  });
  return reuseList(previous?.connectors, list);
}

const NO_ENDS: readonly EndInCavity[] = [];
const NO_MATES: readonly Mate[] = [];

const sameList = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((x, i) => x === b[i]);

const sameEnds = (a: readonly EndInCavity[], b: readonly EndInCavity[]): boolean =>
  a === b || (a.length === b.length && a.every((x, i) => x.wire === b[i]!.wire && x.index === b[i]!.index));

function resolveMates(
  project: Project,
  previous: Harness | undefined,
  connectors: ReadonlyMap<string, ConnectorUse>,
): readonly ResolvedMate[] {
  const was = new Map(previous?.mates.map((m) => [m.mate.id, m]));
  const list = project.mates.flatMap((mate) => {
    const a = connectors.get(mate.a);
    const b = connectors.get(mate.b);
    if (!a || !b) return [];
    const old = was.get(mate.id);
    const sameMap =
      old?.mate === mate &&
      old.a.resolved.part === a.resolved.part &&
      old.b.resolved.part === b.resolved.part;
    const map = sameMap ? old.map : mateMapOf(mate, a.resolved.part, b.resolved.part);
    return [reuse<ResolvedMate>(old, { mate, a, b, map })];
  });
  return reuseList(previous?.mates, list);
}
