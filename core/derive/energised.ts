import type { Signal } from '../model/electrical';
import type { ConnectorUse, ResolvedMate, Supply } from './harness';
import { endKeys, pointKey } from './net-keys';

/** A half that is live while its mate is open, because it lies on the side of the source. */
export interface LiveHalf {
  readonly use: ConnectorUse;
  readonly mate: ResolvedMate;
  readonly cavity: string;
  /** Between it and the source there is a fuse. */
  readonly isFused: boolean;
}

/** Walks from the source of a feed over mates, wires, shared cavities and splices. Empty where no source is stated. */
export function liveHalves(supply: Supply, signal: Signal): readonly LiveHalf[] {
  if (!signal.source) return [];
  const ways = waysOf(supply, signal);
  const start = pointKey(signal.source.connector, signal.source.cavity);
  const seen = new Map<string, boolean>([[start, false]]);
  const todo = [start];
  const out: LiveHalf[] = [];
  for (let key = todo.shift(); key !== undefined; key = todo.shift()) {
    const isFused = seen.get(key) ?? false;
    for (const way of ways.get(key) ?? []) {
      if (seen.has(way.to)) continue;
      if (way.half) out.push({ ...way.half, isFused });
      seen.set(way.to, isFused || way.isFuse);
      todo.push(way.to);
    }
  }
  return out;
}

interface Way {
  readonly to: string;
  readonly isFuse: boolean;
  /** The half that one comes from, where the way leads over a mate. */
  readonly half?: Pick<LiveHalf, 'use' | 'mate' | 'cavity'>;
}

function waysOf(supply: Supply, signal: Signal): ReadonlyMap<string, readonly Way[]> {
  const nets = supply.nets.filter((n) => n.signals.includes(signal));
  const points = new Set(
    nets.flatMap((n) => n.points.map((p) => pointKey(p.connector.connector.id, p.cavity))),
  );
  const fused = new Set(supply.fuses.map((f) => f.wire));
  const out = new Map<string, Way[]>();
  const add = (from: string, way: Way): void => {
    const list = out.get(from);
    if (list) list.push(way);
    else out.set(from, [way]);
  };
  for (const m of supply.mates)
    for (const pair of m.map.pairs) {
      const [a, b] = [pointKey(m.mate.a, pair.a), pointKey(m.mate.b, pair.b)];
      if (!points.has(a) || !points.has(b)) continue;
      add(a, { to: b, isFuse: false, half: { use: m.a, mate: m, cavity: pair.a } });
      add(b, { to: a, isFuse: false, half: { use: m.b, mate: m, cavity: pair.b } });
    }
  for (const net of nets)
    for (const w of net.wires) {
      const [a, b] = endKeys(w);
      const isFuse = fused.has(w.wire.id);
      add(a, { to: b, isFuse });
      add(b, { to: a, isFuse });
    }
  return out;
}
