import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import type { Signal } from '../model/electrical';

type Field = 'pairedWith' | 'redundantTo';

const pairsBy = (field: Field) =>
  memoByIdentity((signals: readonly Signal[]): readonly (readonly [Signal, Signal])[] => {
    const seen = new Set<string>();
    const out: [Signal, Signal][] = [];
    for (const a of signals) {
      const other = a[field];
      const b = other === undefined ? undefined : byId(signals).get(other);
      const key = b && [a.id, b.id].sort().join(' ');
      if (!b || !key || seen.has(key)) continue;
      seen.add(key);
      out.push([a, b]);
    }
    return out;
  });

/** Signals of which one names the other, each two once, in the order of the first that does. */
export const signalPairs: Readonly<
  Record<Field, (signals: readonly Signal[]) => readonly (readonly [Signal, Signal])[]>
> = { pairedWith: pairsBy('pairedWith'), redundantTo: pairsBy('redundantTo') };
