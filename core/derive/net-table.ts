import { listDifference } from '../base/list-difference';
import { reuseList } from '../base/same-fields';
import { compareText } from '../base/stable-order';
import type { CavityUse, ConnectorUse, Net, ResolvedMate, ResolvedWire } from './harness';
import { endKeys, pointKey } from './net-keys';
import { joinNets, netsOf, type NetInputs, type NetPool } from './nets';

/** The nets of a harness, with what they were made from, so that the next ones start from them. */
export interface NetTable {
  readonly inputs: NetInputs;
  readonly list: readonly Net[];
}

type Index = Map<string, Net>;

/**
 * The net at each point and wire end of a table. Handed on from table to table and changed on the way, so that an edit
 * costs what it touches; a table that was passed over twice has none any more and is worked out from the whole.
 */
const indexes = new WeakMap<NetTable, Index>();

/** From this share of changed objects on, working out the whole is cheaper. */
const PATCH_SHARE = 0.2;

export function netTable(inputs: NetInputs, previous?: NetTable): NetTable {
  if (
    previous &&
    previous.inputs.wires === inputs.wires &&
    previous.inputs.connectors === inputs.connectors &&
    previous.inputs.mates === inputs.mates
  )
    return previous;
  const index = previous && indexes.get(previous);
  const list = previous && index ? patch(inputs, previous, index) : null;
  if (previous && index && list) {
    const table = { inputs, list };
    indexes.delete(previous);
    indexes.set(table, index);
    return table;
  }
  const table = { inputs, list: reuseList(previous?.list, netsOf(inputs, previous?.list ?? [])) };
  const made: Index = new Map();
  for (const net of table.list) enter(made, net);
  indexes.set(table, made);
  return table;
}

function enter(index: Index, net: Net): void {
  for (const key of keysOf(net)) index.set(key, net);
}

function* keysOf(net: Net): Generator<string> {
  for (const p of net.points) yield pointKey(p.connector.connector.id, p.cavity);
  for (const w of net.wires) yield* endKeys(w);
}

/** Makes anew only the nets that the changed objects touch, before or after. Null when that is too much. */
function patch(now: NetInputs, { inputs: before, list }: NetTable, index: Index): readonly Net[] | null {
  const wires = listDifference(before.wires, now.wires);
  const connectors = listDifference(before.connectors, now.connectors);
  const mates = listDifference(before.mates, now.mates);
  const changes = wires.fresh.length + wires.gone.length + connectors.fresh.length + connectors.gone.length;
  if (changes > PATCH_SHARE * (now.wires.length + now.connectors.length)) return null;

  const reach = createReach(now.mates, index);
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
  return reuseList(list, merged(list, reach.nets, made));
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

/** Grows from points to their whole nets, and over mates to the cavities that face them. */
function createReach(mates: readonly ResolvedMate[], index: Index): Reach {
  const matesOf = new Map<string, ResolvedMate[]>();
  for (const m of mates)
    for (const id of [m.mate.a, m.mate.b]) {
      const list = matesOf.get(id);
      if (list) list.push(m);
      else matesOf.set(id, [m]);
    }
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
    for (const m of matesOf.get(connector) ?? [])
      for (const p of m.map.pairs) {
        if (m.mate.a === connector && p.a === cavity) push(pointKey(m.mate.b, p.b));
        if (m.mate.b === connector && p.b === cavity) push(pointKey(m.mate.a, p.a));
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
  now: NetInputs,
  reach: Reach,
  wires: { readonly gone: readonly ResolvedWire[]; readonly fresh: readonly ResolvedWire[] },
): NetPool {
  const gone = new Set(wires.gone);
  const mine = new Set(wires.fresh);
  for (const net of reach.nets) for (const w of net.wires) if (!gone.has(w)) mine.add(w);
  const touched = new Set<string>();
  for (const key of reach.keys) {
    const colon = key.indexOf(':');
    if (colon > 0) touched.add(key.slice(0, colon));
  }
  const cavities: (readonly [ConnectorUse, CavityUse])[] = [];
  for (const use of now.connectors) {
    const { id } = use.resolved.connector;
    if (!touched.has(id)) continue;
    for (const c of use.cavities) if (reach.keys.has(pointKey(id, c.cavity))) cavities.push([use, c]);
  }
  const joins: (readonly [string, string])[] = [];
  for (const m of now.mates) {
    if (!touched.has(m.mate.a) && !touched.has(m.mate.b)) continue;
    for (const pair of m.map.pairs) {
      const [a, b] = [pointKey(m.mate.a, pair.a), pointKey(m.mate.b, pair.b)];
      if (reach.keys.has(a) && reach.keys.has(b)) joins.push([a, b]);
    }
  }
  return { wires: now.wires.filter((w) => mine.has(w)), cavities, joins };
}

/** The list without the nets that were touched, with those that were made, in the order of the keys. */
function merged(list: readonly Net[], touched: ReadonlySet<Net>, made: readonly Net[]): readonly Net[] {
  const out: Net[] = [];
  let next = 0;
  for (const net of list) {
    if (touched.has(net)) continue;
    for (let m = made[next]; m && compareText(m.key, net.key) < 0; m = made[++next]) out.push(m);
    out.push(net);
  }
  return out.concat(made.slice(next));
}
