import { memoByIdentity } from '../base/memo-by-identity';
import { compareNatural } from '../base/stable-order';
import type { Harness } from '../derive/harness';

/** A stop on the walk through the sheet: a selection key and the words for it. */
export interface Stop {
  readonly key: string;
  readonly text: string;
}

/** Connectors, splices, then wires, each in natural order of the designators. */
export const stopsOf = memoByIdentity((harness: Harness): readonly Stop[] => {
  const named = (list: readonly { readonly id: string; readonly designator: string }[]): Stop[] =>
    list.map((o) => ({ key: o.id, text: o.designator })).sort((a, b) => compareNatural(a.text, b.text));
  const { equipment, connectors, splices, wires } = harness.project;
  return [...named(equipment), ...named(connectors), ...named(splices), ...named(wires)];
});

/** The next stop after the selected one; null past the ends, so that the keyboard can leave the sheet. */
export function walkOn(harness: Harness, selection: ReadonlySet<string>, step: 1 | -1): Stop | null {
  const stops = stopsOf(harness);
  const current = [...selection].at(-1)?.split(':')[0];
  const at = stops.findIndex((s) => s.key === current);
  const next = at >= 0 ? at + step : step > 0 ? 0 : -1;
  return stops[next] ?? null;
}

/** The cavities of one connector as stops. */
export const cavityStops = (harness: Harness, connector: string): readonly Stop[] =>
  harness.connectorById.get(connector)?.cavities.map((c) => ({
    key: `${connector}:${c.cavity}`,
    text: `${c.connector.connector.designator}:${c.cavity}`,
  })) ?? [];
