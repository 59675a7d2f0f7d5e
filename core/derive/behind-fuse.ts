import { memoByIdentity } from '../base/memo-by-identity';
import type { Fuse } from '../model/electrical';
import type { Project } from '../model/project';
import type { Harness, ResolvedEnd, ResolvedWire } from './harness';
import { pointKey } from './nets';

/** What of a harness the way of a current is read from: a harness, or a part of one that holds all of the net. */
export type NetInput = Pick<Harness, 'nets' | 'wires' | 'wireById' | 'mates'> & {
  readonly project: Readonly<Pick<Project, 'fuses'>>;
};

/** The wires that one fuse alone protects. */
export interface BehindFuse {
  /** Up to the next fuse, which they include: a fuse sits in its wire, and the wire lies before it too. */
  readonly wires: readonly ResolvedWire[];
  /** The way to the source by other wires: the fuse is in a loop and protects nothing alone. */
  readonly isBypassed: boolean;
}

/**
 * Wires from a fuse away from its source, through splices, shared cavities and mates, until the next fuse. Which end of the
 * fuse's own wire faces the source follows from the source that its signal names; undefined where there is none, or where no
 * way leads to it.
 */
export function wiresBehindFuse(harness: NetInput, fuse: Fuse): BehindFuse | undefined {
  const own = harness.wireById.get(fuse.wire);
  const net = own && harness.nets.find((n) => n.wires.includes(own));
  const source = (own?.signal ?? net?.signals[0])?.source;
  if (!own || !source) return undefined;
  const goal = pointKey(source.connector, source.cavity);
  const ways = waysOf(harness);
  const fused = new Set(harness.project.fuses.map((f) => f.wire));

  const walk = (start: string, stopAtFuses: boolean): { nodes: Set<string>; wires: Set<ResolvedWire> } => {
    const nodes = new Set([start]);
    const wires = new Set<ResolvedWire>();
    const todo = [start];
    for (let node = todo.pop(); node !== undefined; node = todo.pop())
      for (const { to, wire } of ways.get(node) ?? []) {
        if (wire === own) continue;
        if (wire) wires.add(wire);
        if ((stopAtFuses && wire && fused.has(wire.wire.id)) || nodes.has(to)) continue;
        nodes.add(to);
        todo.push(to);
      }
    return { nodes, wires };
  };
  const ends = [nodeOf(own.from, own.wire.id, 0), nodeOf(own.to, own.wire.id, 1)] as const;
  const facing = ends.map((end) => walk(end, false).nodes.has(goal));
  if (facing[0] && facing[1]) return { wires: [own], isBypassed: true };
  if (!facing[0] && !facing[1]) return undefined;
  return { wires: [own, ...walk(ends[facing[0] ? 1 : 0], true).wires], isBypassed: false };
}

interface Way {
  readonly to: string;
  readonly wire: ResolvedWire | undefined;
}

const waysOf = memoByIdentity((harness: NetInput): ReadonlyMap<string, readonly Way[]> => {
  const map = new Map<string, Way[]>();
  const connect = (a: string, b: string, wire: ResolvedWire | undefined): void => {
    for (const [from, to] of [[a, b], [b, a]] as const) {
      const list = map.get(from);
      if (list) list.push({ to, wire });
      else map.set(from, [{ to, wire }]);
    }
  }; // prettier-ignore
  for (const w of harness.wires) connect(nodeOf(w.from, w.wire.id, 0), nodeOf(w.to, w.wire.id, 1), w);
  for (const m of harness.mates)
    for (const pair of m.map.pairs)
      connect(
        pointKey(m.a.resolved.connector.id, pair.a),
        pointKey(m.b.resolved.connector.id, pair.b),
        undefined,
      );
  return map;
});

function nodeOf(end: ResolvedEnd, wire: string, index: 0 | 1): string {
  if (end.end.at === 'cavity') return pointKey(end.end.connector, end.end.cavity);
  return end.end.at === 'splice' ? `splice ${end.end.splice}` : `free ${wire}.${index}`;
}
