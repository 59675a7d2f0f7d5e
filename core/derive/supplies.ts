import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import { reuse, reuseList } from '../base/same-fields';
import type { Fuse, Signal } from '../model/electrical';
import type { Project } from '../model/project';
import type { ConnectorUse, Net, ResolvedMate, ResolvedWire, Supply } from './harness';

export interface SupplyInputs {
  readonly project: Project;
  readonly nets: readonly Net[];
  readonly connectorById: ReadonlyMap<string, ConnectorUse>;
  readonly mates: readonly ResolvedMate[];
}

/** The supplies of a harness, worked out when first asked for. */
export interface LazySupplies {
  get(): readonly Supply[];
  /** The newest list that was worked out, here or before; what a later one starts from. */
  latest(): readonly Supply[] | undefined;
}

/** Holds on to the list before, never to the harness before, so that no chain of old harnesses stays alive. */
export function lazySupplies(inputs: SupplyInputs, before: LazySupplies | undefined): LazySupplies {
  const start = before?.latest();
  let list: readonly Supply[] | undefined;
  return {
    get: () => (list ??= suppliesOf(inputs, start)),
    latest: () => list ?? start,
  };
}

/** In the order of the nets. A supply of which nothing changed is the very same object as in `previous`. */
export function suppliesOf(inputs: SupplyInputs, previous?: readonly Supply[]): readonly Supply[] {
  const { groups, feedsOf } = groupsOf(inputs.project.signals);
  const netsOf = new Map<string, Net[]>();
  for (const net of inputs.nets)
    for (const s of net.signals)
      for (const key of groups.get(s.id) ?? []) {
        const list = netsOf.get(key);
        if (!list) netsOf.set(key, [net]);
        else if (list.at(-1) !== net) list.push(net);
      }
  const was = previous && byKey(previous);
  const out: Supply[] = [];
  for (const [key, nets] of netsOf) out.push(supplyOf(key, feedsOf.get(key), nets, inputs, was?.get(key)));
  return reuseList(previous, out);
}

const byKey = memoByIdentity(
  (list: readonly Supply[]): ReadonlyMap<string, Supply> => new Map(list.map((s) => [s.key, s])),
);

/** Which supplies a signal belongs to (a return that itself states a return belongs to two), and what feeds each. */
const groupsOf = memoByIdentity((signals: readonly Signal[]) => {
  const known = byId(signals);
  const feedsOf = new Map<string, Signal[]>();
  const groups = new Map<string, string[]>();
  for (const s of signals) {
    const to = s.returnsOn !== undefined && known.has(s.returnsOn) ? s.returnsOn : undefined;
    if (to === undefined) continue;
    groups.set(s.id, [to]);
    const feeds = feedsOf.get(to);
    if (feeds) feeds.push(s);
    else feedsOf.set(to, [s]);
  }
  for (const s of signals)
    if (feedsOf.has(s.id) || !groups.has(s.id)) groups.set(s.id, [...(groups.get(s.id) ?? []), s.id]);
  return { groups, feedsOf };
});

function supplyOf(
  key: string,
  returning: readonly Signal[] | undefined,
  nets: readonly Net[],
  inputs: SupplyInputs,
  was: Supply | undefined,
): Supply {
  const own = byId(inputs.project.signals).get(key);
  const returnSignal = returning ? own : undefined;
  const feeds = returning ?? (own ? [own] : []);
  if (was && isSame(was, feeds, returnSignal, nets, inputs)) return was;
  const wires = new Set<ResolvedWire>();
  const uses = new Set<ConnectorUse>();
  const partIds = new Set<string>();
  for (const net of nets) {
    for (const w of net.wires) wires.add(w);
    for (const p of net.points) {
      const use = inputs.connectorById.get(p.connector.connector.id);
      if (use) uses.add(use);
    }
    for (const s of net.splices) if (s.part !== undefined) partIds.add(s.part);
  }
  const mates = new Set<ResolvedMate>();
  for (const use of uses)
    for (const m of use.mates) {
      const mate = matesById(inputs.mates).get(m.id);
      if (mate) mates.add(mate);
    }
  const fuses = fusesOf([...wires], inputs.project.fuses);
  for (const f of fuses) if (f.part !== undefined) partIds.add(f.part);
  const parts = byId(inputs.project.parts);
  return reuse<Supply>(was, {
    key,
    feeds,
    returnSignal,
    nets,
    wires: [...wires],
    uses: [...uses],
    mates: [...mates],
    fuses,
    parts: [...partIds].flatMap((id) => parts.get(id) ?? []),
  });
}

/** Tells without building anything, so that an edit elsewhere costs a supply next to nothing. */
function isSame(
  was: Supply,
  feeds: readonly Signal[],
  returnSignal: Signal | undefined,
  nets: readonly Net[],
  { project, connectorById, mates }: SupplyInputs,
): boolean {
  const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
    a.length === b.length && a.every((x, i) => x === b[i]);
  const part = byId(project.parts);
  return (
    was.returnSignal === returnSignal &&
    same(was.nets, nets) &&
    same(was.feeds, feeds) &&
    was.uses.every((u) => connectorById.get(u.resolved.connector.id) === u) &&
    was.mates.every((m) => matesById(mates).get(m.mate.id) === m) &&
    (project.fuses.length === 0
      ? was.fuses.length === 0
      : same(was.fuses, fusesOf(was.wires, project.fuses))) &&
    was.parts.every((p) => part.get(p.id) === p)
  );
}

const matesById = memoByIdentity(
  (mates: readonly ResolvedMate[]): ReadonlyMap<string, ResolvedMate> =>
    new Map(mates.map((m) => [m.mate.id, m])),
);

function fusesOf(wires: readonly ResolvedWire[], fuses: readonly Fuse[]): readonly Fuse[] {
  if (fuses.length === 0) return [];
  const byWire = fusesByWire(fuses);
  return wires.flatMap((w) => byWire.get(w.wire.id) ?? []);
}

const fusesByWire = memoByIdentity((fuses: readonly Fuse[]): ReadonlyMap<string, readonly Fuse[]> => {
  const map = new Map<string, Fuse[]>();
  for (const f of fuses) map.set(f.wire, [...(map.get(f.wire) ?? []), f]);
  return map;
});
