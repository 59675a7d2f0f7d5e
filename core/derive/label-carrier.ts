import { byId } from '../base/by-id';
import type { Project } from '../model/project';
import type { Label } from '../model/topology';

/** The object that carries a label. */
export function labelCarrier(on: Label['on']): {
  readonly type: 'wire' | 'cable' | 'connector' | 'segment';
  readonly id: string;
} {
  switch (on.at) {
    case 'wire-end':
      return { type: 'wire', id: on.wire };
    case 'cable-end':
      return { type: 'cable', id: on.cable };
    case 'connector':
      return { type: 'connector', id: on.connector };
    case 'station':
      return { type: 'segment', id: on.station.segment };
  }
}

/** Its designator; `?` where it does not exist. */
export function carrierName(project: Project, on: Label['on']): string {
  const { type, id } = labelCarrier(on);
  const list = {
    wire: project.wires,
    cable: project.cables,
    connector: project.connectors,
    segment: project.segments,
  }[type];
  return byId<{ readonly id: string; readonly designator: string }>(list).get(id)?.designator ?? '?';
}

/** Where on it, in the words of a list: "W1 end A", "X1", "S3 at 50 mm". */
export function labelPlace(project: Project, on: Label['on']): string {
  const name = carrierName(project, on);
  if (on.at === 'wire-end' || on.at === 'cable-end') return `${name} end ${on.end === 0 ? 'A' : 'B'}`;
  return on.at === 'station' ? `${name} at ${on.station.atMm} mm` : name;
}
