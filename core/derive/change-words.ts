import { byId } from '../base/by-id';
import { COLLECTIONS, type Collection, type Project } from '../model/project';
import type { FieldChange, ObjectChange } from './changes-of';

/** One object of each collection, in the words of the drawing. */
const OBJECT_WORDS: Readonly<Record<Collection | 'project', string>> = {
  project: 'project',
  parts: 'part record',
  equipment: 'equipment',
  signals: 'signal',
  connectors: 'connector',
  contacts: 'contact',
  cables: 'cable',
  wires: 'wire',
  groups: 'group',
  splices: 'splice',
  mates: 'mate',
  fuses: 'fuse',
  nodes: 'node',
  segments: 'segment',
  coverings: 'covering',
  ties: 'tie',
  fixings: 'fixing',
  labels: 'label',
  dimensions: 'dimension',
  decisions: 'decision',
};

/** "wire W2 changed". An object that went is named as it was called before. */
export function changeHeading(before: Project, after: Project, change: ObjectChange): string {
  const from = change.what === 'removed' ? before : after;
  const name = change.collection === 'project' ? '' : ` ${nameOf(from, change.collection, change.id)}`;
  return `${OBJECT_WORDS[change.collection]}${name} ${change.what}`;
}

/** "end 1, contact: C-PIN → C-SOC", ids told by the names of their objects. */
export function fieldChangeText(before: Project, after: Project, change: FieldChange): string {
  return `${fieldText(change.field)}: ${valueText(before, change.before)} → ${valueText(after, change.after)}`;
}

/** "ends[0].stripLengthMm" as people read it: "end 1, strip length (mm)". */
export function fieldText(field: string): string {
  return (
    field
      .replace(/s?\[(\d+)\]/g, (_, n: string) => ` ${Number(n) + 1}`)
      // An entry that goes by an id has nothing to read in it; what it names stands in its value.
      .replace(/\[[0-9a-f]{8}-[0-9a-f-]{27}\]/g, '')
      .replace(/\[([^\]]+)\]/g, ' $1')
      .split('.')
      .map((part) =>
        part
          .replace(/Mm2$/, ' (mm²)')
          .replace(/Mm$/, ' (mm)')
          .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`),
      )
      .join(', ')
  );
}

export function valueText(project: Project, value: unknown): string {
  if (value === undefined || value === null) return 'none';
  if (typeof value === 'string') return namedAnywhere(project, value) ?? (value === '' ? 'empty' : value);
  if (typeof value === 'object') {
    const inner = Object.entries(value).flatMap(([k, v]) => {
      if (Array.isArray(value)) return [valueText(project, v)];
      return k === 'id' ? [] : [`${fieldText(k)} ${valueText(project, v)}`];
    });
    return inner.join(', ') || 'empty';
  }
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
}

type WithId = { readonly id: string };

function namedAnywhere(project: Project, id: string): string | null {
  for (const collection of COLLECTIONS)
    if (byId<WithId>(project[collection]).has(id)) return nameOf(project, collection, id);
  return null;
}

function nameOf(project: Project, collection: Collection, id: string): string {
  const object = byId<WithId>(project[collection]).get(id);
  if (!object) return id;
  const o = object as unknown as Readonly<Record<string, unknown>>;
  const name = o['designator'] ?? o['partNumber'] ?? o['number'] ?? o['name'] ?? o['text'];
  if (typeof name === 'string') return name;
  if (collection === 'mates')
    return `${nameOf(project, 'connectors', String(o['a']))}–${nameOf(project, 'connectors', String(o['b']))}`;
  if (collection === 'contacts') {
    const place = placeOfContact(project, id);
    const part = nameOf(project, 'parts', String(o['part']));
    return place ? `${part} in ${place}` : part;
  }
  // Coverings and ties go by their part.
  return typeof o['part'] === 'string' ? nameOf(project, 'parts', o['part']) : OBJECT_WORDS[collection];
}

function placeOfContact(project: Project, id: string): string | null {
  for (const wire of project.wires)
    for (const end of wire.ends)
      if (end.at === 'cavity' && end.contact === id)
        return `${nameOf(project, 'connectors', end.connector)}:${end.cavity}`;
  for (const connector of project.connectors)
    for (const state of connector.cavities)
      if (state.contact === id) return `${connector.designator}:${state.cavity}`;
  return null;
}
