import type { Call } from '../commands/dispatch';
import type { Harness } from '../derive/harness';
import { compareNatural } from '../base/stable-order';
import { cavityStops, type Stop } from './walk';

/** A wire drawn from the keyboard: from a cavity, to the one that is pointed at. */
export interface KeyWire {
  readonly from: { readonly connector: string; readonly cavity: string };
  readonly to: { readonly connector: string; readonly cavity: string };
}

export type KeyWireInput =
  'next-cavity' | 'previous-cavity' | 'next-connector' | 'previous-connector' | 'finish';

/** Starts at the selected cavity and points at the first cavity of the next connector; null elsewhere. */
export function startKeyWire(harness: Harness, selection: ReadonlySet<string>): KeyWire | null {
  const from = [...selection].map(placeOfKey).find((p) => p !== null);
  if (!from || !harness.connectorById.has(from.connector)) return null;
  return stepTo(harness, { from, to: from }, 1);
}

export function stepKeyWire(
  harness: Harness,
  state: KeyWire,
  input: KeyWireInput,
): { readonly next: KeyWire | null; readonly dispatch?: Call<'wire.add'> } {
  switch (input) {
    case 'next-connector':
      return { next: stepTo(harness, state, 1) };
    case 'previous-connector':
      return { next: stepTo(harness, state, -1) };
    case 'next-cavity':
      return { next: alongCavities(harness, state, 1) };
    case 'previous-cavity':
      return { next: alongCavities(harness, state, -1) };
    case 'finish': {
      const end = (p: KeyWire['from']) => ({ at: 'cavity' as const, ...p });
      return {
        next: null,
        dispatch: { id: 'wire.add', args: { from: end(state.from), to: end(state.to) } },
      };
    }
  }
}

/** "connector:cavity" taken apart; null for the key of anything else. */
export function placeOfKey(key: string): KeyWire['from'] | null {
  const at = key.indexOf(':');
  return at < 0 ? null : { connector: key.slice(0, at), cavity: key.slice(at + 1) };
}

/** Only housings: a wire does not end in a header. */
function stepTo(harness: Harness, state: KeyWire, step: 1 | -1): KeyWire {
  const order = harness.connectors
    .filter((c) => c.resolved.part?.kind !== 'header' || c.resolved.connector.id === state.from.connector)
    .sort((a, b) => compareNatural(a.resolved.connector.designator, b.resolved.connector.designator));
  const at = order.findIndex((c) => c.resolved.connector.id === state.to.connector);
  const next = order[(at + step + order.length) % order.length];
  if (!next) return state;
  const free = next.cavities.find((c) => c.ends.length === 0) ?? next.cavities[0];
  return free ? { ...state, to: { connector: next.resolved.connector.id, cavity: free.cavity } } : state;
}

function alongCavities(harness: Harness, state: KeyWire, step: 1 | -1): KeyWire {
  const stops: readonly Stop[] = cavityStops(harness, state.to.connector);
  const at = stops.findIndex((s) => s.key === `${state.to.connector}:${state.to.cavity}`);
  const next = stops[(at + step + stops.length) % stops.length];
  const to = next && placeOfKey(next.key);
  return to ? { ...state, to } : state;
}
