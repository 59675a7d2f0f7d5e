import { reuse } from '../base/same-fields';
import type { Signal } from '../model/electrical';
import type { Splice } from '../model/wire';
import type { ConnectorUse, Net, NetPoint, ResolvedEnd, ResolvedMate, ResolvedWire } from './harness';

/**
 * Nets by joining points (union-find with path halving): a wire joins its two ends, a mate joins the cavities that
 * meet, a splice joins every end that names it. Cavities that nothing connects and no interface declares are no net.
 */
export function netsOf(
  wires: readonly ResolvedWire[],
  connectors: readonly ConnectorUse[],
  mates: readonly ResolvedMate[],
  previous: ReadonlyMap<string, Net>,
): readonly Net[] {
  const join = createJoin();
  for (const w of wires) join.join(endKey(w.from, w.wire.id, 0), endKey(w.to, w.wire.id, 1));
  for (const m of mates)
    for (const pair of m.map.pairs)
      join.join(pointKey(m.a.resolved.connector.id, pair.a), pointKey(m.b.resolved.connector.id, pair.b));

  const drafts = new Map<number, { points: NetPoint[]; wires: ResolvedWire[]; key: string }>();
  const at = (key: string): { points: NetPoint[]; wires: ResolvedWire[]; key: string } => {
    const root = join.root(key);
    let draft = drafts.get(root);
    if (!draft) drafts.set(root, (draft = { points: [], wires: [], key: '' }));
    return draft;
  };
  const pointBefore = previousPoints(previous);
  for (const use of connectors) {
    for (const c of use.cavities) {
      const key = pointKey(use.resolved.connector.id, c.cavity);
      if (!join.has(key) && !c.signal) continue;
      const draft = at(key);
      draft.points.push(
        reuse(pointBefore.get(key), { connector: use.resolved, cavity: c.cavity, declared: c.signal }),
      );
      if (!draft.key || key < draft.key) draft.key = key;
    }
  }
  for (const w of wires) at(endKey(w.from, w.wire.id, 0)).wires.push(w);
  return [...drafts.values()]
    .filter((d) => d.wires.length > 0 || d.points.some((p) => p.declared))
    .map((d) => {
      const key = d.key || `wire ${d.wires[0]?.wire.id ?? ''}`;
      return reuse<Net>(previous.get(key), {
        key,
        points: d.points,
        wires: d.wires,
        splices: splicesOf(d.wires),
        signals: signalsOf(d.points, d.wires),
      });
    });
}

export const pointKey = (connector: string, cavity: string): string => `${connector}:${cavity}`;

function endKey(end: ResolvedEnd, wire: string, index: 0 | 1): string {
  if (end.end.at === 'cavity') return pointKey(end.end.connector, end.end.cavity);
  if (end.end.at === 'splice') return `splice ${end.end.splice}`;
  return `free ${wire}.${index}`;
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

function previousPoints(previous: ReadonlyMap<string, Net>): Map<string, NetPoint> {
  const out = new Map<string, NetPoint>();
  for (const net of previous.values())
    for (const p of net.points) out.set(pointKey(p.connector.connector.id, p.cavity), p);
  return out;
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
