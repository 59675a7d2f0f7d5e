import { byId } from '../../base/by-id';
import type { Harness } from '../../derive/harness';
import type { Datum, Dimension } from '../../model/topology';
import { placeOfStation, type StationPlace } from './station-place';

/** From each datum to the next, or from the first to each other one. */
export const pairsOf = ({ form, datums }: Dimension): (readonly [Datum, Datum])[] =>
  datums.slice(1).map((to, i) => [(form === 'chain' ? datums[i] : datums[0]) as Datum, to] as const);

/** Where a datum is; undefined for a connector that has no node. */
export function placeOfDatum(harness: Harness, datum: Datum): StationPlace | undefined {
  if (datum.at === 'node') return { at: 'node', node: datum.node };
  if (datum.at === 'station') return placeOfStation(harness, datum.station);
  const node = byId(harness.project.connectors).get(datum.connector)?.node;
  return node === undefined ? undefined : { at: 'node', node };
}
