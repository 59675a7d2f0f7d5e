import { memoByIdentity } from '../base/memo-by-identity';
import type { Net, ResolvedWire } from './harness';

/** The nets that carry a signal, by the id of the signal. */
export const netsBySignal = memoByIdentity((nets: readonly Net[]): ReadonlyMap<string, readonly Net[]> => {
  const out = new Map<string, Net[]>();
  for (const net of nets)
    for (const s of net.signals) {
      const list = out.get(s.id);
      if (list) list.push(net);
      else out.set(s.id, [net]);
    }
  return out;
});

/** The net of each wire, by the id of the wire. */
export const netByWire = memoByIdentity((nets: readonly Net[]): ReadonlyMap<string, Net> => {
  const out = new Map<string, Net>();
  for (const net of nets) for (const w of net.wires) out.set(w.wire.id, net);
  return out;
});

/** Wires of the nets of a signal, each once. */
export const wiresOf = (nets: readonly Net[], signal: string): readonly ResolvedWire[] => [
  ...new Set((netsBySignal(nets).get(signal) ?? []).flatMap((n) => n.wires)),
];
