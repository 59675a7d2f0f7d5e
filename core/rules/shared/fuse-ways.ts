import { wiresBehindFuse, type BehindFuse } from '../../derive/behind-fuse';
import { memoByIdentity } from '../../base/memo-by-identity';
import type { ResolvedWire, Supply } from '../../derive/harness';
import type { Fuse, Signal } from '../../model/electrical';
import type { Need } from '../finding';
import { signalNeed } from './supply-words';
import { fuseRef } from './supply-words';

/** A fuse of the supply, the signal in whose wire it sits, and what it alone protects. */
export interface FuseWay {
  readonly fuse: Fuse;
  readonly signal: Signal | undefined;
  readonly wire: ResolvedWire | undefined;
  /** Undefined: the way from the source to the fuse is not known. */
  readonly behind: BehindFuse | undefined;
  /** No other fuse lies between it and the source. */
  readonly isFirst: boolean;
}

/** Every fuse of the supply with its wires; worked out once for each supply. */
export const fuseWays = memoByIdentity((supply: Supply): readonly FuseWay[] => {
  if (supply.fuses.length === 0) return [];
  const wireById = new Map(supply.wires.map((w) => [w.wire.id, w]));
  const input = {
    nets: supply.nets,
    wires: supply.wires,
    mates: supply.mates,
    wireById,
    project: { fuses: [...supply.fuses] },
  };
  const ways = supply.fuses.map((fuse) => {
    const wire = wireById.get(fuse.wire);
    const net = wire && supply.nets.find((n) => n.wires.includes(wire));
    return { fuse, wire, signal: wire?.signal ?? net?.signals[0], behind: wiresBehindFuse(input, fuse) };
  });
  return ways.map((way) => ({
    ...way,
    isFirst: !ways.some(
      (o) => o !== way && o.behind && !o.behind.isBypassed && way.wire && o.behind.wires.includes(way.wire),
    ),
  }));
});

/** What is missing to know what a fuse protects. */
export const wayNeeds = ({ signal, fuse }: FuseWay): Need[] => [
  signal
    ? signalNeed(signal, 'source', 'source')
    : { what: `signal of the wire of ${fuse.designator}`, at: fuseRef(fuse), field: 'wire' },
];

/** Wires of a signal that lie behind none of its fuses. */
export function wiresBeforeFuses(supply: Supply, wires: readonly ResolvedWire[]): readonly ResolvedWire[] {
  const behind = new Set(fuseWays(supply).flatMap((w) => w.behind?.wires ?? []));
  return wires.filter((w) => !behind.has(w));
}
