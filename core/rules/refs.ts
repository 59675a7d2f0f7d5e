import { nameOfDatum } from '../derive/formboard/dimension-values';
import type { CavityUse, ConnectorUse, ResolvedConnector, ResolvedWire, SegmentUse } from '../derive/harness';
import type { Contact } from '../model/connector';
import type { Part } from '../model/parts/part';
import { byId } from '../base/by-id';
import type { Project } from '../model/project';
import type { ObjectRef } from './finding';

export const connectorRef = (c: ResolvedConnector | ConnectorUse): ObjectRef => ({
  type: 'connector',
  id: 'resolved' in c ? c.resolved.connector.id : c.connector.id,
});

export const cavityRef = (c: Pick<CavityUse, 'connector' | 'cavity'>): ObjectRef => ({
  type: 'cavity',
  id: c.connector.connector.id,
  cavity: c.cavity,
});

export const wireRef = (w: ResolvedWire): ObjectRef => ({ type: 'wire', id: w.wire.id });

export const segmentRef = (use: SegmentUse): ObjectRef => ({ type: 'segment', id: use.segment.id });

export const contactRef = (contact: Contact): ObjectRef => ({ type: 'contact', id: contact.id });

export const partRef = (part: Part): ObjectRef => ({ type: 'part', id: part.id });

/** "X1:3": a cavity as people write it. */
export const cavityName = (c: Pick<CavityUse, 'connector' | 'cavity'>): string =>
  `${c.connector.connector.designator}:${c.cavity}`;

/** Where a part's values come from, for evidence. */
export function partSource(part: Part): string {
  const record = `${part.kind} ${part.partNumber}`;
  return part.catalogue
    ? `${part.catalogue.name} ${part.catalogue.revision}, ${record}`
    : `project, ${record}`;
}

/** An object of a finding in the words of the drawing: "X1", "X1:3", "W2", a part number. */
export function refText(project: Project, ref: ObjectRef): string {
  switch (ref.type) {
    case 'cavity':
      return `${byId(project.connectors).get(ref.id)?.designator ?? ref.id}:${ref.cavity ?? '?'}`;
    case 'connector':
      return byId(project.connectors).get(ref.id)?.designator ?? ref.id;
    case 'mate': {
      const mate = byId(project.mates).get(ref.id);
      const name = (id: string | undefined): string =>
        byId(project.connectors).get(id ?? '')?.designator ?? '?';
      return `${name(mate?.a)}–${name(mate?.b)}`;
    }
    case 'wire':
      return byId(project.wires).get(ref.id)?.designator ?? ref.id;
    case 'cable':
      return byId(project.cables).get(ref.id)?.designator ?? ref.id;
    case 'group':
      return byId(project.groups).get(ref.id)?.designator ?? ref.id;
    case 'splice':
      return byId(project.splices).get(ref.id)?.designator ?? ref.id;
    case 'fuse':
      return byId(project.fuses).get(ref.id)?.designator ?? ref.id;
    case 'equipment':
      return byId(project.equipment).get(ref.id)?.designator ?? ref.id;
    case 'node':
      return byId(project.nodes).get(ref.id)?.designator ?? ref.id;
    case 'segment':
      return byId(project.segments).get(ref.id)?.designator ?? ref.id;
    case 'covering':
      return byId(project.coverings).get(ref.id)?.designator ?? ref.id;
    case 'tie': {
      const tie = byId(project.ties).get(ref.id);
      return `tie ${tie ? nameOfDatum(project, { at: 'station', station: tie.station }) : ref.id}`;
    }
    case 'fixing':
      return byId(project.fixings).get(ref.id)?.designator ?? ref.id;
    case 'label':
      return `label ${byId(project.labels).get(ref.id)?.text ?? ref.id}`;
    case 'dimension': {
      const datums = byId(project.dimensions).get(ref.id)?.datums ?? [];
      const [first, last] = [datums[0], datums.at(-1)];
      return first && last ? `${nameOfDatum(project, first)}–${nameOfDatum(project, last)}` : ref.id;
    }
    case 'signal':
      return byId(project.signals).get(ref.id)?.name ?? ref.id;
    case 'part':
      return byId(project.parts).get(ref.id)?.partNumber ?? ref.id;
    case 'contact':
      return contactText(project, ref.id);
    case 'project':
      return project.titleBlock.title;
  }
}

function contactText(project: Project, id: string): string {
  for (const w of project.wires)
    for (const end of w.ends)
      if (end.at === 'cavity' && end.contact === id)
        return `${byId(project.connectors).get(end.connector)?.designator ?? '?'}:${end.cavity}`;
  for (const c of project.connectors)
    for (const e of c.cavities) if (e.contact === id) return `${c.designator}:${e.cavity}`;
  return id;
}
