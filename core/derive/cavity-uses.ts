import { listDifference } from '../base/list-difference';
import { reuse, reuseList } from '../base/same-fields';
import type { Contact, Mate } from '../model/connector';
import type { Signal } from '../model/electrical';
import { partOfKind, type Part } from '../model/parts/part';
import { cavityLayoutOf } from './cavity-layout';
import type { CavityUse, ConnectorUse, EndInCavity, ResolvedConnector, ResolvedWire } from './harness';

export interface CavityLookups {
  readonly parts: ReadonlyMap<string, Part>;
  readonly contacts: ReadonlyMap<string, Contact>;
  readonly signals: ReadonlyMap<string, Signal>;
}

/** Wire ends by connector id, in wire order. */
export function endsByConnector(wires: readonly ResolvedWire[]): ReadonlyMap<string, readonly EndInCavity[]> {
  const out = new Map<string, EndInCavity[]>();
  for (const wire of wires) {
    for (const index of [0, 1] as const) {
      const end = index === 0 ? wire.from : wire.to;
      if (end.end.at !== 'cavity') continue;
      const list = out.get(end.end.connector);
      const entry = { wire, index, end };
      if (list) list.push(entry);
      else out.set(end.end.connector, [entry]);
    }
  }
  return out;
}

/** The same from that of a moment before: only connectors at which a changed wire ends get a new list. */
export function patchEnds(
  previous: ReadonlyMap<string, readonly EndInCavity[]>,
  before: readonly ResolvedWire[],
  after: readonly ResolvedWire[],
): ReadonlyMap<string, readonly EndInCavity[]> {
  if (before === after) return previous;
  const { gone, fresh } = listDifference(before, after);
  if (gone.length + fresh.length > after.length / 4) return endsByConnector(after);
  const touched = new Set<string>();
  for (const w of [...gone, ...fresh])
    for (const { end } of [w.from, w.to]) if (end.at === 'cavity') touched.add(end.connector);
  const out = new Map(previous);
  const mine = new Set(fresh);
  const left = new Set(gone);
  for (const id of touched) {
    for (const e of previous.get(id) ?? []) if (!left.has(e.wire)) mine.add(e.wire);
    out.delete(id);
  }
  // Through the whole list once, so that each connector has its ends in the order of the wires.
  for (const [id, ends] of endsByConnector(after.filter((w) => mine.has(w))))
    if (touched.has(id)) out.set(id, ends);
  return out;
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
