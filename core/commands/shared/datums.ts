import type { Project } from '../../model/project';
import type { Datum } from '../../model/topology';
import { missing, objectIn } from './draft-object';
import { noStation } from './stations';

/** Why these datums cannot be measured, or null. */
export function noDatums(project: Project, datums: readonly Datum[]): string | null {
  for (const [i, datum] of datums.entries()) {
    const reason = noDatum(project, datum);
    if (reason) return reason;
    const before = datums[i - 1];
    if (before && key(before) === key(datum)) return 'A dimension goes from one place to another.';
  }
  return null;
}

function noDatum(project: Project, datum: Datum): string | null {
  if (datum.at === 'node') return missing(project, 'nodes', [datum.node], 'node');
  if (datum.at === 'station') return noStation(project, datum.station);
  const gone = missing(project, 'connectors', [datum.connector], 'connector');
  if (gone) return gone;
  const connector = objectIn(project, 'connectors', datum.connector);
  return connector?.node ? null : `${connector?.designator} has no node on the formboard to measure from.`;
}

const key = (d: Datum): string => {
  if (d.at === 'node') return d.node;
  return d.at === 'connector' ? d.connector : `${d.station.segment} ${d.station.atMm}`;
};
