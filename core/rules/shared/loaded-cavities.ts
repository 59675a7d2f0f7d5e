import { memoByIdentity } from '../../base/memo-by-identity';
import type { CavityUse, ConnectorUse, Net, ResolvedMate, Supply } from '../../derive/harness';
import type { KnownCurrent, SupplyCurrents } from '../../derive/supply-currents';

/** A cavity in which wires of the supply end, and the net it belongs to. */
export interface WiredCavity {
  readonly use: ConnectorUse;
  readonly cavity: CavityUse;
  readonly net: Net;
}

export function wiredCavities(supply: Supply): readonly WiredCavity[] {
  const uses = new Map(supply.uses.map((u) => [u.resolved.connector.id, u]));
  return supply.nets.flatMap((net) =>
    net.points.flatMap((p) => {
      const use = uses.get(p.connector.connector.id);
      const cavity = use?.cavities.find((c) => c.cavity === p.cavity);
      return use && cavity && cavity.ends.length > 0 ? [{ use, cavity, net }] : [];
    }),
  );
}

/** The mates of each connector, by its id, in their order. */
const matesOf = memoByIdentity((supply: Supply): ReadonlyMap<string, readonly ResolvedMate[]> => {
  const out = new Map<string, ResolvedMate[]>();
  for (const m of supply.mates)
    for (const id of new Set([m.a.resolved.connector.id, m.b.resolved.connector.id])) {
      const here = out.get(id);
      if (here) here.push(m);
      else out.set(id, [m]);
    }
  return out;
});

/** What goes through the contact: what its mate carries; where nothing is mated, the most that one of its wires carries. */
export function currentThrough(
  { use, cavity }: WiredCavity,
  supply: Supply,
  currents: SupplyCurrents,
): KnownCurrent | undefined {
  const id = use.resolved.connector.id;
  const through = (matesOf(supply).get(id) ?? []).flatMap((m: ResolvedMate) => {
    if (m.a.resolved.connector.id === id) return currents.ofMate(m, cavity.cavity) ?? [];
    if (m.b.resolved.connector.id !== id) return [];
    const there = m.map.fromB.get(cavity.cavity);
    return there === undefined ? [] : (currents.ofMate(m, there) ?? []);
  });
  const known = through.length > 0 ? through : cavity.ends.flatMap((e) => currents.ofWire(e.wire) ?? []);
  return known.reduce<KnownCurrent | undefined>((a, b) => (!a || b.currentA > a.currentA ? b : a), undefined);
}
