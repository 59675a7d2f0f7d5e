import { compareText } from '../base/stable-order';
import type { Signal } from '../model/electrical';
import type { CavityUse, ConnectorUse, Harness, Net } from './harness';
import type { LookAlikes } from './look-alikes';
import { geometryMapOf } from './mate-map';
import { netAt } from './net-table';
import { joinNets, pointKey } from './nets';

/** What happens where nets meet that should not, the worst first. */
export const CONSEQUENCES = [
  'supplies-joined',
  'supply-shorted',
  'supply-on-signal',
  'wrong-voltage',
  'loads-exchanged',
  'signal-grounded',
  'signals-exchanged',
] as const;
export type Consequence = (typeof CONSEQUENCES)[number];

/** Nets of the design that one wrong mate joins. */
export interface JoinedNets {
  /** Cavities that meet, as in "X1:3 in X5:3". */
  readonly cavities: readonly { readonly free: string; readonly into: string }[];
  readonly signals: readonly Signal[];
  /** Those of them whose source is connected, or whose source is not stated. */
  readonly fed: readonly Signal[];
  readonly consequence: Consequence;
}

/** What the harness is read from: all nets, connectors and mates. */
type Input = Pick<Harness, 'nets' | 'mateById' | 'connectorById'>;

const known = new WeakMap<
  LookAlikes,
  { readonly nets: readonly Net[]; readonly joined: readonly JoinedNets[] }
>();

/**
 * The nets that meet when two places are confused: their own mates are opened, the wrong ones made, and only the nets that touch
 * one of these halves are worked out again. Harmless meetings are left out, the worst stands first. Remembered while these nets
 * stay the same.
 */
export function wrongPlugNets(harness: Input, pair: LookAlikes): readonly JoinedNets[] {
  const ids = new Set(pair.right.flat());
  const nets = netsAt(harness, ids);
  const before = known.get(pair);
  if (before && before.nets.length === nets.length && before.nets.every((n, i) => n === nets[i]))
    return before.joined;
  const joined = join(harness, pair, nets, ids);
  known.set(pair, { nets, joined });
  return joined;
}

function join(
  harness: Input,
  pair: LookAlikes,
  nets: readonly Net[],
  ids: ReadonlySet<string>,
): readonly JoinedNets[] {
  const pieces = piecesOf(harness, nets, ids);
  const at = new Map<string, number>();
  pieces.forEach((piece, i) => {
    for (const p of piece.points) at.set(pointKey(p.connector.connector.id, p.cavity), i);
  });
  const groups = createGroups(pieces.length);
  const meetings: { readonly piece: number; readonly free: string; readonly into: string }[] = [];
  for (const { free, into } of pair.wrong) {
    const [a, b] = [harness.connectorById.get(free)?.resolved, harness.connectorById.get(into)?.resolved];
    if (!a?.part || !b?.part) continue;
    for (const met of geometryMapOf(a.part, b.part).pairs) {
      const [x, y] = [at.get(pointKey(free, met.a)), at.get(pointKey(into, met.b))];
      if (x === undefined || y === undefined) continue;
      groups.join(x, y);
      const name = (c: typeof a, cavity: string): string => `${c.connector.designator}:${cavity}`;
      meetings.push({ piece: x, free: name(a, met.a), into: name(b, met.b) });
    }
  }
  const out: JoinedNets[] = [];
  for (const root of new Set(meetings.map((m) => groups.root(m.piece)))) {
    const members = pieces.filter((_, i) => groups.root(i) === root);
    const signals = [...new Set(members.flatMap((m) => signalsOf(m, ids)))];
    // What the design itself joins is another rule's business.
    if (signals.length < 2 || nets.some((n) => signals.every((s) => n.signals.includes(s)))) continue;
    const fed = signals.filter((s) => isFed(s, members));
    const consequence = consequenceOf(signals, fed);
    if (!consequence) continue;
    const cavities = meetings.filter((m) => groups.root(m.piece) === root);
    out.push({ cavities: cavities.map(({ free, into }) => ({ free, into })), signals, fed, consequence });
  }
  return out.sort((a, b) => CONSEQUENCES.indexOf(a.consequence) - CONSEQUENCES.indexOf(b.consequence));
}

/** What the nets fall into when the mates of these connectors are open. */
function piecesOf(harness: Input, nets: readonly Net[], ids: ReadonlySet<string>): readonly Net[] {
  const uses = new Map<string, ConnectorUse>();
  const cavities: (readonly [ConnectorUse, CavityUse])[] = [];
  const keys = new Set<string>();
  for (const net of nets)
    for (const p of net.points) {
      const use = harness.connectorById.get(p.connector.connector.id);
      const cavity = use?.cavities.find((c) => c.cavity === p.cavity);
      if (!use || !cavity) continue;
      uses.set(use.resolved.connector.id, use);
      cavities.push([use, cavity]);
      keys.add(pointKey(use.resolved.connector.id, cavity.cavity));
    }
  const open = new Set([...uses.values()].flatMap((u) => u.mates.map((m) => m.id)));
  const joins: (readonly [string, string])[] = [];
  for (const id of open) {
    const m = harness.mateById.get(id);
    if (!m || ids.has(m.mate.a) || ids.has(m.mate.b)) continue;
    for (const p of m.map.pairs) {
      const [a, b] = [pointKey(m.mate.a, p.a), pointKey(m.mate.b, p.b)];
      if (keys.has(a) && keys.has(b)) joins.push([a, b]);
    }
  }
  const wires = [...new Set(nets.flatMap((n) => n.wires))];
  return joinNets({ wires, cavities, joins }, []);
}

/** Positions decide; the names of wires count where no position says anything and the wires lead out of the harness. */
function signalsOf(piece: Net, open: ReadonlySet<string>): readonly Signal[] {
  const declared = piece.points.flatMap((p) => p.declared ?? []);
  const sourced = piece.signals.filter((s) => hasSource(s, piece));
  if (declared.length > 0 || sourced.length > 0) return [...new Set([...declared, ...sourced])];
  const leadsOut =
    piece.points.some(
      (p) => p.connector.connector.supply === 'equipment' || !open.has(p.connector.connector.id),
    ) || piece.wires.some((w) => w.from.end.at === 'free' || w.to.end.at === 'free');
  return leadsOut ? piece.signals : [];
}

const hasSource = (s: Signal, piece: Net): boolean =>
  piece.points.some((p) => p.connector.connector.id === s.source?.connector && p.cavity === s.source.cavity);

const isFed = (s: Signal, pieces: readonly Net[]): boolean =>
  s.source === undefined || pieces.some((p) => hasSource(s, p));

/** Nets at 0 V and shields may meet; so may loads that nothing feeds. */
function consequenceOf(signals: readonly Signal[], fed: readonly Signal[]): Consequence | undefined {
  const power = fed.filter((s) => s.class === 'power');
  const supply = power[0];
  const isPlain = (s: Signal): boolean => s.class === undefined || s.class === 'signal';
  if (power.length > 1) return 'supplies-joined';
  if (supply) {
    const others = signals.filter((s) => s !== supply);
    if (others.some((s) => s.class !== 'power' && !isPlain(s))) return 'supply-shorted';
    if (others.some(isPlain)) return 'supply-on-signal';
    const alike = others.every((s) => s.voltageV !== undefined && s.voltageV === supply.voltageV);
    return alike ? 'loads-exchanged' : 'wrong-voltage';
  }
  if (!fed.some(isPlain)) return undefined;
  return signals.every((s) => isPlain(s) || s.class === 'power') ? 'signals-exchanged' : 'signal-grounded';
}

/** The nets at the cavities of connectors, connector by connector. */
function netsAt({ nets, connectorById }: Input, ids: ReadonlySet<string>): readonly Net[] {
  const out = new Set<Net>();
  for (const id of ids) {
    const own = new Set<Net>();
    for (const { cavity } of connectorById.get(id)?.cavities ?? []) {
      const net = netAt(nets, pointKey(id, cavity));
      if (net) own.add(net);
    }
    for (const net of [...own].sort((a, b) => compareText(a.key, b.key))) out.add(net);
  }
  return [...out];
}

function createGroups(count: number): { join(a: number, b: number): void; root(i: number): number } {
  const parent = Array.from({ length: count }, (_, i) => i);
  const root = (i: number): number => {
    while (parent[i] !== i) i = parent[i]!;
    return i;
  };
  return {
    root,
    join(a, b) {
      const [x, y] = [root(a), root(b)];
      if (x !== y) parent[Math.max(x, y)] = Math.min(x, y);
    },
  };
}
