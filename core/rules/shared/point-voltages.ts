import { memoByIdentity } from '../../base/memo-by-identity';
import type { Net } from '../../derive/harness';
import { pointKey } from '../../derive/nets';

/** The signals' voltage at each connector position, V; positions of nets without a stated voltage are left out. */
export const pointVoltages = memoByIdentity((nets: readonly Net[]): ReadonlyMap<string, number> => {
  const out = new Map<string, number>();
  for (const net of nets) {
    const known = net.signals.flatMap((s) => s.voltageV ?? []);
    if (known.length === 0) continue;
    const voltageV = known.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
    for (const p of net.points) out.set(pointKey(p.connector.connector.id, p.cavity), voltageV);
  }
  return out;
});
