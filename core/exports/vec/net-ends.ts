import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness, Net, ResolvedWire } from '../../derive/harness';
import { openPortId, portId } from '../exchange/object-ids';

/** A port at which wires of a net end: a cavity, or an end that lies free. */
export interface NetEnd {
  readonly port: string;
  readonly name: string;
}

export interface NetWithEnds {
  readonly net: Net;
  readonly ends: readonly NetEnd[];
}

/** The port of a wire end; none for an end in a splice, which is within the net. */
export function portOfEnd(wire: ResolvedWire, index: 0 | 1): NetEnd | undefined {
  const { end, connector } = index === 0 ? wire.from : wire.to;
  if (end.at === 'splice') return undefined;
  if (end.at === 'cavity' && connector && hasCavity(connector.part?.ways, end.cavity))
    return {
      port: portId(end.connector, end.cavity),
      name: `${connector.connector.designator}:${end.cavity}`,
    };
  return {
    port: openPortId(wire.wire.id, index),
    name: `${wire.wire.designator} ${index === 0 ? 'from' : 'to'}`,
  };
}

/** Cavities are numbered from 1; without a record nothing is known of them, so none is missing. */
const hasCavity = (ways: number | undefined, cavity: string): boolean =>
  ways === undefined || (String(Number(cavity)) === cavity && Number(cavity) >= 1 && Number(cavity) <= ways);

/** Nets with two ends or more: VEC knows no connection of one. */
export const connectedNets: (harness: Harness) => readonly NetWithEnds[] = memoByIdentity(
  (harness: Harness) =>
    harness.nets.flatMap((net) => {
      const ends = new Map<string, NetEnd>();
      for (const wire of net.wires)
        for (const index of [0, 1] as const) {
          const end = portOfEnd(wire, index);
          if (end) ends.set(end.port, end);
        }
      return ends.size >= 2 ? [{ net, ends: [...ends.values()] }] : [];
    }),
);

/** The net of each wire, where it is written as a connection. */
export const netOfWire: (harness: Harness) => ReadonlyMap<string, string> = memoByIdentity(
  (harness: Harness) =>
    new Map(connectedNets(harness).flatMap(({ net }) => net.wires.map((w) => [w.wire.id, net.key] as const))),
);
