import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness } from '../../derive/harness';
import type { Part, PartKind } from '../../model/parts/part';
import { cavityName } from '../../rules/refs';
import type { Supply } from '../parts/part-lines';

/** A piece that is fitted to a connector, a cavity or a wire end and has no designator of its own. */
export interface Fitted {
  readonly key: readonly string[];
  readonly name: string;
  readonly kind: PartKind;
  /** Undefined where it is needed but none was chosen. */
  readonly part: Part | undefined;
  readonly supply: Supply;
  readonly connector: string;
  /** Undefined for what is fitted to the connector as a whole. */
  readonly cavity: { readonly name: string; readonly exists: boolean } | undefined;
}

/** Locks, strain reliefs, caps: one entry a piece. */
export function accessoriesOf(harness: Harness): readonly Fitted[] {
  return harness.connectors.flatMap(({ resolved: { connector } }) =>
    connector.accessories.flatMap((a) => {
      const part = harness.parts.get(a.part);
      if (!part) return [];
      return Array.from({ length: a.quantity }, (_, i) => ({
        key: [a.id, String(i + 1)],
        name: `${connector.designator} ${part.kind}${a.quantity > 1 ? ` ${i + 1}` : ''}`,
        kind: part.kind,
        part,
        supply: connector.supply,
        connector: connector.id,
        cavity: undefined,
      }));
    }),
  );
}

/** Plugs of plugged cavities, and of blocked ones that name a plug. */
export function plugsOf(harness: Harness): readonly Fitted[] {
  return harness.connectors.flatMap(({ resolved: { connector }, cavities }) =>
    cavities.flatMap((cavity) => {
      const isKey = cavity.state === 'blocked' && cavity.plug !== undefined;
      if (cavity.state !== 'plugged' && !isKey) return [];
      return {
        key: [connector.id, cavity.cavity],
        name: `${cavityName(cavity)} plug`,
        kind: 'cavity-plug' as const,
        part: cavity.plug,
        supply: connector.supply,
        connector: connector.id,
        cavity: { name: cavity.cavity, exists: cavity.exists },
      };
    }),
  );
}

/** Seals on wire ends, by wire and end. */
export const sealsOf: (harness: Harness) => readonly Fitted[] = memoByIdentity((harness: Harness) =>
  harness.wires.flatMap(({ wire, from, to }) =>
    [from, to].flatMap(({ end, connector }, index) => {
      if (end.at !== 'cavity' || !end.seal) return [];
      return {
        key: [wire.id, String(index)],
        name: `${connector?.connector.designator ?? '?'}:${end.cavity} seal of ${wire.designator}`,
        kind: 'wire-seal' as const,
        part: harness.parts.get(end.seal),
        supply: 'harness' as const,
        connector: end.connector,
        cavity: { name: end.cavity, exists: true },
      };
    }),
  ),
);

/** Keys of the wire ends that have a seal, as `sealKey` makes them. */
export const sealedEnds: (harness: Harness) => ReadonlySet<string> = memoByIdentity(
  (harness: Harness) => new Set(sealsOf(harness).map((s) => s.key.join(' '))),
);
export const sealKey = (wire: string, index: number): readonly string[] => [wire, String(index)];
