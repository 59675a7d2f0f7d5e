import { memoByIdentity } from '../../base/memo-by-identity';
import { compareNatural } from '../../base/stable-order';
import type { CavityUse, ConnectorUse, Harness, ResolvedWire } from '../harness';
import { endKeys, pointKey } from '../net-keys';

/** A place that a tester can touch: a cavity of the harness, or a free end. */
export interface TestPoint {
  readonly key: string;
  /** "X1:3", or the text of a free end. */
  readonly text: string;
  readonly cavity: CavityUse | undefined;
  readonly wire: ResolvedWire | undefined;
}

/** A wire as an edge between the keys of its ends; a splice is a key without a point. */
export interface TestWire {
  readonly wire: ResolvedWire;
  readonly keys: readonly [string, string];
}

/** What the harness by itself connects: wires and splices, every connector unmated. */
export interface TestNet {
  readonly points: readonly TestPoint[];
  readonly wires: readonly TestWire[];
}

export interface TestModel {
  readonly nets: readonly TestNet[];
  readonly wires: readonly TestWire[];
  /** Cavities of the harness in which no wire ends and which an adapter reaches: not plugged, not blocked. */
  readonly unwired: readonly TestPoint[];
  /** Connectors that an adapter is plugged into, by designator. */
  readonly connectors: readonly ConnectorUse[];
  readonly netOfKey: ReadonlyMap<string, number>;
}

const pointText = (use: CavityUse): string => `${use.connector.connector.designator}:${use.cavity}`;

/** Points and nets in natural order, so that a list made from them is the same each time. */
export const testModelOf = memoByIdentity((harness: Harness): TestModel => {
  const wires = harness.wires.map((wire): TestWire => ({ wire, keys: endKeys(wire) }));
  const root = rootsOf(wires);
  const pointAt = new Map<string, TestPoint>();
  const unwired: TestPoint[] = [];
  const connectors: ConnectorUse[] = [];
  for (const use of harness.connectors) {
    const { connector } = use.resolved;
    const wired = use.cavities.some((c) => c.ends.length > 0);
    if (connector.supply !== 'harness' && !wired) continue;
    connectors.push(use);
    for (const c of use.cavities) {
      const key = pointKey(connector.id, c.cavity);
      const point = { key, text: pointText(c), cavity: c, wire: undefined };
      if (c.ends.length > 0) pointAt.set(key, point);
      else if (c.exists && c.state !== 'plugged' && c.state !== 'blocked') unwired.push(point);
    }
  }
  for (const { wire, keys } of wires)
    [wire.from, wire.to].forEach(({ end }, i) => {
      const key = keys[i]!;
      if (end.at !== 'free' || pointAt.has(key)) return;
      const text = end.text ?? `free end ${i === 0 ? 'A' : 'B'} of ${wire.wire.designator}`;
      pointAt.set(key, { key, text, cavity: undefined, wire });
    });

  const drafts = new Map<string, { points: TestPoint[]; wires: TestWire[] }>();
  const draftAt = (key: string) => {
    const r = root(key);
    let draft = drafts.get(r);
    if (!draft) drafts.set(r, (draft = { points: [], wires: [] }));
    return draft;
  };
  for (const w of wires) draftAt(w.keys[0]).wires.push(w);
  for (const p of pointAt.values()) draftAt(p.key).points.push(p);
  const nets = [...drafts.values()].map((d) => ({ ...d, points: d.points.sort(byText) })).sort(byFirstPoint);
  const netOfKey = new Map<string, number>();
  nets.forEach((net, i) => {
    for (const w of net.wires) for (const key of w.keys) netOfKey.set(key, i);
  });
  return {
    nets,
    wires,
    unwired: unwired.sort(byText),
    connectors: connectors.sort((a, b) =>
      compareNatural(a.resolved.connector.designator, b.resolved.connector.designator),
    ),
    netOfKey,
  };
});

const byText = (a: TestPoint, b: TestPoint): number =>
  compareNatural(a.text, b.text) || (a.key < b.key ? -1 : 1);

const byFirstPoint = (a: TestNet, b: TestNet): number =>
  compareNatural(a.points[0]?.text ?? '~', b.points[0]?.text ?? '~') ||
  compareNatural(a.wires[0]?.wire.wire.designator ?? '', b.wires[0]?.wire.wire.designator ?? '');

/** Union-find over the ends of wires: the smallest key stands for all that are joined. */
export function rootsOf(
  edges: Iterable<{ readonly keys: readonly [string, string] }>,
): (key: string) => string {
  const parent = new Map<string, string>();
  const find = (key: string): string => {
    let at = key;
    for (let up = parent.get(at); up !== undefined && up !== at; up = parent.get(at)) at = up;
    if (at !== key) parent.set(key, at);
    return at;
  };
  for (const { keys } of edges) {
    const [a, b] = [find(keys[0]), find(keys[1])];
    if (a !== b) parent.set(a < b ? b : a, a < b ? a : b);
  }
  return find;
}
