import { compareNatural } from '../../base/stable-order';
import type { ConnectorUse, Harness } from '../../derive/harness';

/** Connectors that the harness brings, or in which one of its wires ends; by designator. */
export const shopConnectors = (harness: Harness): readonly ConnectorUse[] =>
  harness.connectors
    .filter((c) => c.resolved.connector.supply === 'harness' || c.cavities.some((v) => v.ends.length > 0))
    .sort((a, b) => compareNatural(a.resolved.connector.designator, b.resolved.connector.designator));
