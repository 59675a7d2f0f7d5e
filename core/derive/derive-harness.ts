import { byId, followIndex } from '../base/by-id';
import { listDifference, type ListDifference } from '../base/list-difference';
import { reuseList } from '../base/same-fields';
import type { Connector } from '../model/connector';
import { COLLECTIONS, type Project } from '../model/project';
import { connectorUseOf, endsAt, endTable, patchedEnds, type EndTable } from './cavity-uses';
import { changedNames, isNone, type ChangedNames } from './changed-ids';
import type { ConnectorUse, EndInCavity, Harness, ResolvedConnector } from './harness';
import { followLineage } from './lineage';
import { matesByConnector, matesById, resolveMates } from './resolve-mates';
import { netTable, type NetTable } from './net-table';
import { resolveWires } from './resolve-changed-wires';
import { resolveConnectors } from './resolve-connectors';
import { createRouter } from './route';
import { segmentTables, type SegmentTables } from './segment-uses';
import { lazySupplies, type LazySupplies } from './supply-table';

/** Inner tables that the next derivation starts from; not for readers of the harness. */
interface Carried {
  readonly resolved: readonly ResolvedConnector[];
  readonly ends: EndTable;
  readonly nets: NetTable;
  readonly segments: SegmentTables;
  readonly supplies: LazySupplies;
}

const carried = new WeakMap<Harness, Carried>();

/** The state before, and what of the collections that others name changed since. */
interface Before {
  readonly harness: Harness;
  readonly tables: Carried;
  readonly names: ChangedNames;
}

/**
 * Resolves a project. Given the harness of the state before, it does again only what an edit touched: objects that
 * stay the same keep their identity. The result never depends on `previous`, only its cost does.
 */
export function deriveHarness(project: Project, previous?: Harness): Harness {
  if (previous?.project === project) return previous;
  const before = previous && follow(previous, project);
  const was = before?.harness;
  const old = before?.tables;
  const parts = byId(project.parts);

  const resolved = resolveConnectors(
    project,
    before && { project: before.harness.project, resolved: before.tables.resolved },
  );
  const resolvedById = byId(project.connectors).beside(resolved);
  const router =
    was?.project.nodes === project.nodes && was.project.segments === project.segments
      ? was.router
      : createRouter(project.nodes, project.segments, was?.router);

  const wires = resolveWires(
    project,
    resolvedById,
    router,
    before && {
      ...before,
      ends: before.tables.ends,
      connectors: idsOf(listDifference(before.tables.resolved, resolved)),
    },
  );
  const wireById = byId(project.wires).beside(wires);
  const changedWires = was && listDifference(was.wires, wires);
  const ends =
    old && changedWires
      ? patchedEnds(old.ends, byId(project.connectors), wireById, changedWires)
      : endTable(byId(project.connectors), wires);
  const connectors = useConnectors(project, resolved, ends, before);
  const connectorById = byId(project.connectors).beside(connectors);
  const changedConnectors = was && listDifference(was.connectors, connectors);
  const mates = resolveMates(project, connectorById, was, changedConnectors);
  const mateById =
    was && mates === was.mates && project.mates === was.project.mates
      ? was.mateById
      : matesById(project.mates, mates);
  const nets = netTable(
    { wires, wireById, connectors, connectorById, mates, mateById },
    old && changedWires && changedConnectors
      ? { table: old.nets, wires: changedWires, connectors: changedConnectors }
      : undefined,
  );
  const segments = segmentTables(
    { project, parts, connectors: resolved, wires, wireById, router },
    old?.segments,
  );
  const supplies = lazySupplies(
    { project, nets: nets.list, connectors, connectorById, mates, mateById },
    old?.supplies,
  );

  const harness: Harness = {
    project,
    parts,
    connectors,
    connectorById,
    wires,
    wireById,
    mates,
    mateById,
    nets: nets.list,
    segments: segments.list,
    get supplies() {
      return supplies.get();
    },
    router,
  };
  carried.set(harness, { resolved, ends, nets, segments, supplies });
  return harness;
}

/** Lets everything that is kept beside the collections of a project go on to the next one. */
function follow(harness: Harness, project: Project): Before | undefined {
  const tables = carried.get(harness);
  if (!tables) return undefined;
  followLineage(harness.project, project);
  for (const collection of COLLECTIONS) followIndex(harness.project[collection], project[collection]);
  return { harness, tables, names: changedNames(harness.project, project) };
}

function idsOf({ gone, fresh }: ListDifference<ResolvedConnector>): ReadonlySet<string> {
  const out = new Set<string>();
  for (const c of gone) out.add(c.connector.id);
  for (const c of fresh) out.add(c.connector.id);
  return out;
}

function useConnectors(
  project: Project,
  resolved: readonly ResolvedConnector[],
  ends: EndTable,
  before: Before | undefined,
): readonly ConnectorUse[] {
  const was = before?.harness;
  const matesOf = matesByConnector(project.mates);
  const look = {
    parts: byId(project.parts),
    contacts: byId(project.contacts),
    signals: byId(project.signals),
  };
  const sameMates = was?.project.mates === project.mates;
  const sameNames = before !== undefined && isNone(before.names);
  const out: ConnectorUse[] = [];
  for (let i = 0; i < resolved.length; i++) {
    const self = resolved[i]!;
    const { id } = self.connector;
    const guess = was?.connectors[i];
    const use = guess?.resolved.connector.id === id ? guess : was?.connectorById.get(id);
    const mine = ends.ends[i]!;
    const mates = sameMates && use ? use.mates : (matesOf.get(id) ?? NO_MATES);
    const untouched =
      before !== undefined &&
      use?.resolved === self &&
      (mates === use.mates || sameList(use.mates, mates)) &&
      sameEnds(use === guess ? before.tables.ends.ends[i]! : endsAt(before.tables.ends, id), mine) &&
      (sameNames || !doesName(self.connector, before.names));
    out.push(untouched ? use : connectorUseOf(self, mine, mates, look, use));
  }
  return reuseList(was?.connectors, out);
}

const doesName = (connector: Connector, names: ChangedNames): boolean =>
  connector.cavities.some(
    (c) =>
      (c.signal !== undefined && names.signals.has(c.signal)) ||
      (c.contact !== undefined && names.contacts.has(c.contact)) ||
      (c.plug !== undefined && names.parts.has(c.plug)),
  );

const NO_MATES: ConnectorUse['mates'] = [];

const sameList = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((x, i) => x === b[i]);

const sameEnds = (a: readonly EndInCavity[], b: readonly EndInCavity[]): boolean =>
  a === b || (a.length === b.length && a.every((x, i) => x.wire === b[i]!.wire && x.index === b[i]!.index));
