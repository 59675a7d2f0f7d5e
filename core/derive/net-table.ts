import { exchangeSorted } from '../base/exchange-sorted';
import { listDifference, type ListDifference } from '../base/list-difference';
import type { PlacedMap } from '../base/placed-map';
import { reuseList } from '../base/same-fields';
import type { CavityUse, ConnectorUse, Net, ResolvedMate, ResolvedWire } from './harness';
import { endKeys, pointKey } from './net-keys';
import { joinNets, netsOf, type NetInputs, type NetPool } from './nets';

/** What nets are made from, with the places of wires and connectors. */
interface PlacedInputs extends NetInputs {
  readonly wireById: PlacedMap<ResolvedWire>;
  readonly connectorById: PlacedMap<ConnectorUse>;
  readonly mateById: ReadonlyMap<string, ResolvedMate>;
}

/** The nets of a harness, with what they were made from, so that the next ones start from them. */
export interface NetTable {
  readonly inputs: NetInputs;
  readonly list: readonly Net[];
}

/** The table of the state before, and what changed since. */
interface NetsBefore {
  readonly table: NetTable;
  readonly wires: ListDifference<ResolvedWire>;
  readonly connectors: ListDifference<ConnectorUse>;
}

type Index = Map<string, Net>;

/**
 * The net at each point and wire end of a list of nets. Handed on from list to list and changed on the way, so that an edit
 * costs what it touches; a list that was passed over has none any more and is worked out from the whole.
 */
const indexes = new WeakMap<readonly Net[], Index>();

/** From this share of changed objects on, working out the whole is cheaper. */
const PATCH_SHARE = 0.2;

export function netTable(inputs: PlacedInputs, before?: NetsBefore): NetTable {
  const previous = before?.table;
  if (
    previous &&
    previous.inputs.wires === inputs.wires &&
    previous.inputs.connectors === inputs.connectors &&
    previous.inputs.mates === inputs.mates
  )
    return previous;
  const patched = before ? patch(inputs, before) : null;
  if (patched) return { inputs, list: patched };
  return { inputs, list: reuseList(previous?.list, netsOf(inputs, previous?.list ?? [])) };
}

/** The net at a point, or at the end of a wire; see `net-keys`. */
export const netAt = (nets: readonly Net[], key: string): Net | undefined => indexOf(nets).get(key);

function indexOf(nets: readonly Net[]): Index {
  let index = indexes.get(nets);
  if (!index) {
    index = new Map();
    for (const net of nets) enter(index, net);
    indexes.set(nets, index);
  }
  return index;
}

function enter(index: Index, net: Net): void {
  for (const key of keysOf(net)) index.set(key, net);
}

function keysOf(net: Net): readonly string[] {
  const out: string[] = [];
  for (const p of net.points) out.push(pointKey(p.connector.connector.id, p.cavity));
  for (const w of net.wires) out.push(...endKeys(w));
  return out;
}

/** Makes anew only the nets that the changed objects touch, before or after. Null when that is too much. */
function patch(
  now: PlacedInputs,
  { table: { inputs: before, list }, wires, connectors }: NetsBefore,
): readonly Net[] | null {
  const mates = listDifference(before.mates, now.mates);
  const changes = wires.fresh.length + wires.gone.length + connectors.fresh.length + connectors.gone.length;
  if (changes > PATCH_SHARE * (now.wires.length + now.connectors.length)) return null;

  const index = indexOf(list);
  const reach = createReach(now, index);
  for (const w of [...wires.gone, ...wires.fresh]) for (const key of endKeys(w)) reach.add(key);
  const was = new Map(connectors.gone.map((c) => [c.resolved.connector.id, c]));
  for (const use of connectors.fresh) {
    const old = was.get(use.resolved.connector.id);
    was.delete(use.resolved.connector.id);
    if (old && samePoints(old, use)) continue;
    for (const c of [...use.cavities, ...(old?.cavities ?? [])])
      reach.add(pointKey(use.resolved.connector.id, c.cavity));
  }
  for (const use of was.values())
    for (const c of use.cavities) reach.add(pointKey(use.resolved.connector.id, c.cavity));
  for (const m of [...mates.gone, ...mates.fresh])
    for (const pair of m.map.pairs) {
      reach.add(pointKey(m.a.resolved.connector.id, pair.a));
      reach.add(pointKey(m.b.resolved.connector.id, pair.b));
    }

  const made = joinNets(poolOf(now, reach, wires), reach.nets);
  for (const net of reach.nets) for (const key of keysOf(net)) index.delete(key);
  for (const net of made) enter(index, net);
  const next = exchangeSorted(list, [...reach.nets].map((n) => n.key), made); // prettier-ignore
  indexes.delete(list);
  indexes.set(next, index);
  return next;
}

/** A net sees of a connector which cavities it has, what they declare, and the connector itself. */
const samePoints = (a: ConnectorUse, b: ConnectorUse): boolean =>
  a.resolved === b.resolved &&
  a.cavities.length === b.cavities.length &&
  a.cavities.every((c, i) => c.cavity === b.cavities[i]?.cavity && c.signal === b.cavities[i]?.signal);

interface Reach {
  readonly keys: ReadonlySet<string>;
  readonly nets: ReadonlySet<Net>;
  add(key: string): void;
}

const NO_MATES: ConnectorUse['mates'] = [];
const NO_PAIRS: ResolvedMate['map']['pairs'] = [];

/** Grows from points to their whole nets, and over mates to the cavities that face them. */
function createReach({ connectorById, mateById }: PlacedInputs, index: Index): Reach {
  const keys = new Set<string>();
  const nets = new Set<Net>();
  const open: string[] = [];
  const push = (key: string): void => {
    if (keys.has(key)) return;
    keys.add(key);
    open.push(key);
  };
  const facing = (key: string): void => {
    const colon = key.indexOf(':');
    if (colon < 0) return;
    const [connector, cavity] = [key.slice(0, colon), key.slice(colon + 1)];
    for (const mate of connectorById.get(connector)?.mates ?? NO_MATES)
      for (const p of mateById.get(mate.id)?.map.pairs ?? NO_PAIRS) {
        if (mate.a === connector && p.a === cavity) push(pointKey(mate.b, p.b));
        if (mate.b === connector && p.b === cavity) push(pointKey(mate.a, p.a));
      }
  };
  return {
    keys,
    nets,
    add(start) {
      push(start);
      for (let key = open.pop(); key !== undefined; key = open.pop()) {
        facing(key);
        const net = index.get(key);
        if (!net || nets.has(net)) continue;
        nets.add(net);
        for (const k of keysOf(net)) push(k);
      }
    },
  };
}

/** What lies within reach, in the order of the project. */
function poolOf(
  { wireById, connectorById, mateById }: PlacedInputs,
  reach: Reach,
  wires: ListDifference<ResolvedWire>,
): NetPool {
  const gone = new Set(wires.gone);
  const mine = new Set(wires.fresh);
  for (const net of reach.nets) for (const w of net.wires) if (!gone.has(w)) mine.add(w);
  const touched = new Set<string>();
  for (const key of reach.keys) {
    const colon = key.indexOf(':');
    if (colon > 0) touched.add(key.slice(0, colon));
  }
  const uses = [...touched].flatMap((id) => connectorById.get(id) ?? []);
  const cavities: (readonly [ConnectorUse, CavityUse])[] = [];
  for (const use of inOrder(uses, (u) => connectorById.placeOf(u.resolved.connector.id)))
    for (const c of use.cavities)
      if (reach.keys.has(pointKey(use.resolved.connector.id, c.cavity))) cavities.push([use, c]);
  const joins: (readonly [string, string])[] = [];
  for (const id of new Set(uses.flatMap((u) => u.mates.map((m) => m.id)))) {
    const m = mateById.get(id);
    for (const pair of m?.map.pairs ?? NO_PAIRS) {
      const [a, b] = [pointKey(m!.mate.a, pair.a), pointKey(m!.mate.b, pair.b)];
      if (reach.keys.has(a) && reach.keys.has(b)) joins.push([a, b]);
    }
  }
  return { wires: inOrder([...mine], (w) => wireById.placeOf(w.wire.id)), cavities, joins };
}

const inOrder = <T>(list: readonly T[], placeOf: (item: T) => number | undefined): readonly T[] =>
  list
    .map((item) => ({ item, at: placeOf(item) ?? 0 }))
    .sort((a, b) => a.at - b.at)
    .map((x) => x.item);
