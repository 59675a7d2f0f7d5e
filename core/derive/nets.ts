import { compareText } from '../base/stable-order';
import { reuse } from '../base/same-fields';
import type { Signal } from '../model/electrical';
import type { Splice } from '../model/wire';
import type { CavityUse, ConnectorUse, Net, NetPoint, ResolvedMate, ResolvedWire } from './harness';
import { endKeys, pointKey } from './net-keys';

export { pointKey } from './net-keys';

/** What nets are made from. */
export interface NetInputs {
  readonly wires: readonly ResolvedWire[];
  readonly connectors: readonly ConnectorUse[];
  readonly mates: readonly ResolvedMate[];
}

/** The part of the inputs that is looked at: everything, or what one edit can have touched. */
export interface NetPool {
  readonly wires: readonly ResolvedWire[];
  readonly cavities: Iterable<readonly [ConnectorUse, CavityUse]>;
  /** Pairs of points that mates join. */
  readonly joins: Iterable<readonly [string, string]>;
}

/** All nets, in the order of their keys. */
export const netsOf = ({ wires, connectors, mates }: NetInputs, previous: readonly Net[]): readonly Net[] =>
  joinNets({ wires, cavities: allCavities(connectors), joins: allJoins(mates) }, previous);

/**
 * Nets by joining points (union-find with path halving): a wire joins its two ends, a mate joins the cavities that
 * meet, a splice joins every end that names it. Cavities that nothing connects and no interface declares are no net.
 */
export function joinNets(pool: NetPool, previous: Iterable<Net>): readonly Net[] {
  const join = createJoin();
  for (const w of pool.wires) join.join(...endKeys(w));
  for (const [a, b] of pool.joins) join.join(a, b);

  const drafts = new Map<number, Draft>();
  const at = (key: string): Draft => {
    const root = join.root(key);
    let draft = drafts.get(root);
    if (!draft) drafts.set(root, (draft = { points: [], wires: [], key: '' }));
    return draft;
  };
  const before = new Map<string, Net>();
  const pointBefore = new Map<string, NetPoint>();
  for (const net of previous) {
    before.set(net.key, net);
    for (const p of net.points) pointBefore.set(pointKey(p.connector.connector.id, p.cavity), p);
  }
  for (const [use, c] of pool.cavities) {
    const key = pointKey(use.resolved.connector.id, c.cavity);
    if (!join.has(key) && !c.signal) continue;
    const draft = at(key);
    draft.points.push(
      reuse(pointBefore.get(key), { connector: use.resolved, cavity: c.cavity, declared: c.signal }),
    );
    if (!draft.key || key < draft.key) draft.key = key;
  }
  for (const w of pool.wires) at(endKeys(w)[0]).wires.push(w);
  return [...drafts.values()]
    .filter((d) => d.wires.length > 0 || d.points.some((p) => p.declared))
    .map((d) => {
      const key = d.key || `wire ${d.wires[0]?.wire.id ?? ''}`;
      return reuse<Net>(before.get(key), {
        key,
        points: d.points,
        wires: d.wires,
        splices: splicesOf(d.wires),
        signals: signalsOf(d.points, d.wires),
      });
    })
    .sort((a, b) => compareText(a.key, b.key));
}

interface Draft {
  points: NetPoint[];
  wires: ResolvedWire[];
  key: string;
}

function* allCavities(connectors: readonly ConnectorUse[]): Generator<readonly [ConnectorUse, CavityUse]> {
  for (const use of connectors) for (const c of use.cavities) yield [use, c];
}

function* allJoins(mates: readonly ResolvedMate[]): Generator<readonly [string, string]> {
  for (const m of mates)
    for (const pair of m.map.pairs)
      yield [pointKey(m.a.resolved.connector.id, pair.a), pointKey(m.b.resolved.connector.id, pair.b)];
}

function splicesOf(wires: readonly ResolvedWire[]): readonly Splice[] {
  const out = new Set<Splice>();
  for (const w of wires) for (const end of [w.from, w.to]) if (end.splice) out.add(end.splice);
  return [...out];
}

function signalsOf(points: readonly NetPoint[], wires: readonly ResolvedWire[]): readonly Signal[] {
  const out = new Set<Signal>();
  for (const p of points) if (p.declared) out.add(p.declared);
  for (const w of wires) if (w.signal) out.add(w.signal);
  return [...out];
}

function createJoin(): {
  join(a: string, b: string): void;
  root(key: string): number;
  has(key: string): boolean;
} {
  const index = new Map<string, number>();
  const parent: number[] = [];
  const indexOf = (key: string): number => {
    let i = index.get(key);
    if (i === undefined) {
      i = parent.length;
      parent.push(i);
      index.set(key, i);
    }
    return i;
  };
  const find = (i: number): number => {
    while (parent[i] !== i) i = parent[i] = parent[parent[i]!]!;
    return i;
  };
  return {
    join(a, b) {
      const x = find(indexOf(a));
      const y = find(indexOf(b));
      if (x !== y) parent[Math.max(x, y)] = Math.min(x, y);
    },
    root: (key) => find(indexOf(key)),
    has: (key) => index.has(key),
  };
}
