import { byId } from '../../base/by-id';
import type { Datum, Dimension } from '../../model/topology';
import type { Harness } from '../harness';
import { wayBetween, type Extent, type Place } from './way-between';

/** One measured length of a dimension. */
export interface DimensionValue {
  readonly from: Datum;
  readonly to: Datum;
  /** Along the harness; undefined where it cannot be measured. */
  readonly valueMm: number | undefined;
  /** Stretches that it is measured over. */
  readonly extents: readonly Extent[];
  /** What keeps it from being measured, in words. */
  readonly needs: readonly string[];
}

type Measured = Pick<Harness, 'project' | 'router'>;

/**
 * The lengths that a dimension states, along the harness: of a chain from each datum to the next, of a baseline from the
 * first to each other one. A connector is measured at its node, where the rear face of its body stands.
 */
export function dimensionValues(
  harness: Measured,
  { form, datums }: Pick<Dimension, 'form' | 'datums'>,
): readonly DimensionValue[] {
  return datums
    .slice(1)
    .map((to, i) => lengthBetween(harness, (form === 'chain' ? datums[i] : datums[0])!, to));
}

/** Length along the harness from one datum to another. */
export function lengthBetween({ project, router }: Measured, from: Datum, to: Datum): DimensionValue {
  const open = (needs: readonly string[]): DimensionValue => ({
    from,
    to,
    valueMm: undefined,
    extents: [],
    needs,
  });
  const [a, b] = [placeOfDatum(project, from), placeOfDatum(project, to)];
  const loose = [from, to].filter((d) => !placeOfDatum(project, d));
  if (!a || !b) return open(loose.map((d) => `a formboard node for ${nameOfDatum(project, d)}`));
  const way = wayBetween(a, b, byId(project.segments), router);
  if (!way) return open([`segments that join ${nameOfDatum(project, from)} and ${nameOfDatum(project, to)}`]);
  return { from, to, valueMm: way.lengthMm, extents: way.extents, needs: [] };
}

/** Where a datum is on the harness. */
export function placeOfDatum(project: Harness['project'], datum: Datum): Place | undefined {
  if (datum.at === 'station') return datum.station;
  const node = datum.at === 'node' ? datum.node : byId(project.connectors).get(datum.connector)?.node;
  return node === undefined ? undefined : { node };
}

/** What a datum is called: "N3", "X1", "S2 at 40 mm". */
export function nameOfDatum(project: Harness['project'], datum: Datum): string {
  if (datum.at === 'node') return byId(project.nodes).get(datum.node)?.designator ?? 'a node';
  if (datum.at === 'connector')
    return byId(project.connectors).get(datum.connector)?.designator ?? 'a connector';
  const segment = byId(project.segments).get(datum.station.segment)?.designator ?? 'a segment';
  return `${segment} at ${Math.round(datum.station.atMm * 10) / 10} mm`;
}
