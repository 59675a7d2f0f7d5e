import type { ListDifference } from '../base/list-difference';
import type { PlacedMap } from '../base/placed-map';
import { reuse, reuseList } from '../base/same-fields';
import type { Connector, Contact, Mate } from '../model/connector';
import type { Signal } from '../model/electrical';
import { partOfKind, type Part } from '../model/parts/part';
import { cavityLayoutOf } from './cavity-layout';
import type { CavityUse, ConnectorUse, EndInCavity, ResolvedConnector, ResolvedWire } from './harness';

export interface CavityLookups {
  readonly parts: ReadonlyMap<string, Part>;
  readonly contacts: ReadonlyMap<string, Contact>;
  readonly signals: ReadonlyMap<string, Signal>;
}

/** Wire ends beside the connectors of a project, each list in wire order. */
export interface EndTable {
  readonly connectors: PlacedMap<Connector>;
  readonly ends: readonly (readonly EndInCavity[])[];
  /** Whether an end names a connector that is not there. */
  readonly isDangling: boolean;
}

const NO_ENDS: readonly EndInCavity[] = [];

export const endsAt = (table: EndTable, connector: string): readonly EndInCavity[] =>
  table.ends[table.connectors.placeOf(connector) ?? -1] ?? NO_ENDS;

export function endTable(connectors: PlacedMap<Connector>, wires: Iterable<ResolvedWire>): EndTable {
  const ends: EndInCavity[][] = [];
  for (let i = 0; i < connectors.size; i++) ends.push([]);
  let isDangling = false;
  for (const wire of wires)
    for (const index of [0, 1] as const) {
      const end = index === 0 ? wire.from : wire.to;
      if (end.end.at !== 'cavity') continue;
      const list = ends[connectors.placeOf(end.end.connector) ?? -1];
      if (list) list.push({ wire, index, end });
      else isDangling = true;
    }
  return { connectors, ends, isDangling };
}

/**
 * The same from that of a moment before: only connectors at which a changed wire ends get a new list. `places` tells the order
 * of the wires.
 */
export function patchedEnds(
  before: EndTable,
  connectors: PlacedMap<Connector>,
  wires: PlacedMap<ResolvedWire>,
  { gone, fresh }: ListDifference<ResolvedWire>,
): EndTable {
  const samePlaces = before.connectors === connectors || before.connectors.isAlike(connectors);
  if (!samePlaces || before.isDangling || gone.length + fresh.length > wires.size / 4)
    return endTable(connectors, wires.values());
  const ends = before.ends.slice(0, connectors.size);
  while (ends.length < connectors.size) ends.push(NO_ENDS);
  const touched = new Set<number>();
  let isDangling = false;
  for (const list of [gone, fresh])
    for (const w of list)
      for (const { end } of [w.from, w.to]) {
        if (end.at !== 'cavity') continue;
        const at = connectors.placeOf(end.connector);
        if (at !== undefined) touched.add(at);
        else if (list === fresh) isDangling = true;
      }
  const left = new Set(gone);
  const came = new Map<number, EndInCavity[]>();
  for (const wire of fresh)
    for (const index of [0, 1] as const) {
      const end = index === 0 ? wire.from : wire.to;
      const at = end.end.at === 'cavity' ? connectors.placeOf(end.end.connector) : undefined;
      if (at === undefined) continue;
      const list = came.get(at);
      if (list) list.push({ wire, index, end });
      else came.set(at, [{ wire, index, end }]);
    }
  const placeOf = (e: EndInCavity): number => 2 * (wires.placeOf(e.wire.wire.id) ?? 0) + e.index;
  for (const at of touched) {
    const stay = (ends[at] ?? NO_ENDS).filter((e) => !left.has(e.wire));
    ends[at] = [...stay, ...(came.get(at) ?? NO_ENDS)].sort((a, b) => placeOf(a) - placeOf(b));
  }
  return { connectors, ends, isDangling };
}

/** One connector with all its cavities; the very `previous` object when nothing of it changed. */
export function connectorUseOf(
  resolved: ResolvedConnector,
  ends: readonly EndInCavity[],
  mates: readonly Mate[],
  look: CavityLookups,
  previous: ConnectorUse | undefined,
): ConnectorUse {
  const entries = new Map(resolved.connector.cavities.map((e) => [e.cavity, e]));
  const byCavity = new Map<string, EndInCavity[]>();
  for (const e of ends) {
    const cavity = e.end.end.at === 'cavity' ? e.end.end.cavity : '';
    const list = byCavity.get(cavity);
    if (list) list.push(e);
    else byCavity.set(cavity, [e]);
  }
  const before = new Map(previous?.cavities.map((c) => [c.cavity, c]));
  const existing = resolved.part ? cavityLayoutOf(resolved.part).places.map((p) => p.cavity) : [];
  const known = new Set(existing);
  const named = [...new Set([...entries.keys(), ...byCavity.keys()])].filter((c) => !known.has(c));
  const cavities = [...existing, ...named].map((cavity): CavityUse => {
    const entry = entries.get(cavity);
    const was = before.get(cavity);
    const here = (byCavity.get(cavity) ?? []).map((e, i) => reuse(was?.ends[i], e));
    const spare = entry?.contact ? look.contacts.get(entry.contact) : undefined;
    return reuse(was, {
      connector: resolved,
      cavity,
      // Without a part record nothing is known of its cavities, so none can be called wrong.
      exists: known.has(cavity) || !resolved.part,
      state: here.length > 0 ? ('wired' as const) : (entry?.state ?? 'undeclared'),
      entry,
      signal: entry?.signal ? look.signals.get(entry.signal) : undefined,
      ends: here,
      spare: spare && partOfKind(look.parts.get(spare.part), 'contact'),
      plug: entry?.plug ? look.parts.get(entry.plug) : undefined,
    });
  });
  return reuse(previous, {
    resolved,
    cavities: reuseList(previous?.cavities, cavities),
    mates: reuseList(previous?.mates, mates),
  });
}
