import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import { reuse, reuseList } from '../base/same-fields';
import { compareText } from '../base/stable-order';
import type { Fuse, Signal } from '../model/electrical';
import type { Project } from '../model/project';
import type { ConnectorUse, Net, ResolvedMate, ResolvedWire, Supply } from './harness';

export interface SupplyInputs {
  readonly project: Project;
  readonly nets: readonly Net[];
  readonly connectors: readonly ConnectorUse[];
  readonly connectorById: ReadonlyMap<string, ConnectorUse>;
  readonly mates: readonly ResolvedMate[];
  readonly mateById: ReadonlyMap<string, ResolvedMate>;
}

/** In the order of their keys. A supply of which nothing changed is the very same object as in `previous`. */
export function suppliesOf(inputs: SupplyInputs, previous?: readonly Supply[]): readonly Supply[] {
  const netsOf = new Map<string, Net[]>();
  for (const net of inputs.nets)
    for (const key of supplyKeysOf(net, inputs.project)) {
      const list = netsOf.get(key);
      if (list) list.push(net);
      else netsOf.set(key, [net]);
    }
  const was = new Map(previous?.map((s) => [s.key, s]));
  const keys = [...netsOf.keys()].sort(compareText);
  return reuseList(
    previous,
    keys.map((key) => supplyOf(key, netsOf.get(key) ?? [], inputs, was.get(key))),
  );
}

/** The supplies that a net takes part in, each once. */
export function supplyKeysOf(net: Net, project: Project): readonly string[] {
  const { keysOf } = returnsIn(project.signals);
  if (net.signals.length === 1 && net.signals[0]) return keysOf.get(net.signals[0].id) ?? [];
  return [...new Set(net.signals.flatMap((s) => keysOf.get(s.id) ?? []))];
}

/** How signals return, by their ids. */
interface Returns {
  /** The supplies of each signal; a return that itself states a return belongs to two. */
  readonly keysOf: ReadonlyMap<string, readonly string[]>;
  /** What returns on each. */
  readonly feedsOf: ReadonlyMap<string, readonly string[]>;
}

const returns = new WeakMap<readonly Signal[], Returns>();

function returnsIn(signals: readonly Signal[]): Returns {
  const before = returns.get(signals);
  if (before) return before;
  const known = byId(signals);
  const feedsOf = new Map<string, string[]>();
  const keysOf = new Map<string, string[]>();
  for (const s of signals) {
    const to = s.returnsOn !== undefined && known.has(s.returnsOn) ? s.returnsOn : undefined;
    if (to === undefined) continue;
    keysOf.set(s.id, [to]);
    const feeds = feedsOf.get(to);
    if (feeds) feeds.push(s.id);
    else feedsOf.set(to, [s.id]);
  }
  for (const s of signals)
    if (feedsOf.has(s.id) || !keysOf.has(s.id)) keysOf.set(s.id, [...(keysOf.get(s.id) ?? []), s.id]);
  const made = { keysOf, feedsOf };
  returns.set(signals, made);
  return made;
}

/** Whether the signals return as they did before, whatever else of them changed. */
export function returnAlike(before: readonly Signal[], after: readonly Signal[]): boolean {
  if (before === after) return true;
  if (before.length !== after.length) return false;
  for (let i = 0; i < after.length; i++) {
    const [a, b] = [before[i], after[i]];
    if (a !== b && (a?.id !== b?.id || a?.returnsOn !== b?.returnsOn)) return false;
  }
  if (!returns.has(after)) returns.set(after, returnsIn(before));
  return true;
}

/** The supplies of a signal. */
export const supplyKeysOfSignal = (signal: string, project: Project): readonly string[] =>
  returnsIn(project.signals).keysOf.get(signal) ?? [];

/** One supply, with the nets that take part in it in the order of the harness; `was` itself where nothing changed. */
export function supplyOf(
  key: string,
  nets: readonly Net[],
  inputs: SupplyInputs,
  was: Supply | undefined,
): Supply {
  const signals = byId(inputs.project.signals);
  const returning = returnsIn(inputs.project.signals).feedsOf.get(key);
  const own = signals.get(key);
  const returnSignal = returning ? own : undefined;
  const feeds = returning ? returning.flatMap((id) => signals.get(id) ?? []) : own ? [own] : [];
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
      const mate = inputs.mateById.get(m.id);
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
  { project, connectorById, mateById }: SupplyInputs,
): boolean {
  const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
    a.length === b.length && a.every((x, i) => x === b[i]);
  const part = byId(project.parts);
  return (
    was.returnSignal === returnSignal &&
    same(was.nets, nets) &&
    same(was.feeds, feeds) &&
    was.uses.every((u) => connectorById.get(u.resolved.connector.id) === u) &&
    was.mates.every((m) => mateById.get(m.mate.id) === m) &&
    (project.fuses.length === 0
      ? was.fuses.length === 0
      : same(was.fuses, fusesOf(was.wires, project.fuses))) &&
    was.parts.every((p) => part.get(p.id) === p)
  );
}

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
