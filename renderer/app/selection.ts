import { byId } from '@latchwork/core/base/by-id';
import { memoByIdentity } from '@latchwork/core/base/memo-by-identity';
import { COLLECTIONS, type Collection, type Project } from '@latchwork/core/model/project';
import type { ObjectRef } from '@latchwork/core/rules/finding';

const TYPES = {
  connectors: 'connector',
  wires: 'wire',
  mates: 'mate',
  contacts: 'contact',
  cables: 'cable',
  groups: 'group',
  splices: 'splice',
  fuses: 'fuse',
  parts: 'part',
  equipment: 'equipment',
  signals: 'signal',
  nodes: 'node',
  segments: 'segment',
  coverings: 'covering',
  ties: 'tie',
  fixings: 'fixing',
  labels: 'label',
  dimensions: 'dimension',
} as const satisfies Partial<Record<Collection, ObjectRef['type']>>;

/** The object under a key of the selection (an id, or "id:cavity"); null when it is gone. */
export function refOfKey(project: Project, key: string): ObjectRef | null {
  const colon = key.indexOf(':');
  if (colon >= 0) {
    const id = key.slice(0, colon);
    return byId(project.connectors).has(id) ? { type: 'cavity', id, cavity: key.slice(colon + 1) } : null;
  }
  for (const collection of COLLECTIONS) {
    const type = (TYPES as Partial<Record<Collection, ObjectRef['type']>>)[collection];
    if (type && byId(project[collection] as readonly { id: string }[]).has(key)) return { type, id: key };
  }
  return null;
}

/** What is selected and still there, in the order in which it was selected. */
export const selectedRefs = (project: Project, selection: ReadonlySet<string>): readonly ObjectRef[] =>
  [...selection].flatMap((key) => refOfKey(project, key) ?? []);

/** Ids of selected objects that stand in the project by themselves: a cavity is part of its connector. */
export const selectedIds = (project: Project, selection: ReadonlySet<string>): readonly string[] =>
  selectedRefs(project, selection).flatMap((r) => (r.type === 'cavity' ? [] : [r.id]));

/**
 * Objects as the sheet can show them: a contact by its cavity, a part or a signal by the objects that use it.
 */
export function showable(project: Project, refs: readonly ObjectRef[]): readonly ObjectRef[] {
  return refs.flatMap((ref): ObjectRef[] => {
    if (ref.type === 'contact') return placeOfContact(project).get(ref.id) ?? [];
    if (ref.type === 'part')
      return [
        ...project.connectors
          .filter((c) => c.part === ref.id)
          .map((c) => ({ type: 'connector' as const, id: c.id })),
        ...project.wires.filter((w) => w.part === ref.id).map((w) => ({ type: 'wire' as const, id: w.id })),
      ];
    if (ref.type === 'signal')
      return project.wires
        .filter((w) => w.signal === ref.id)
        .map((w) => ({ type: 'wire' as const, id: w.id }));
    return ref.type === 'project' ? [] : [ref];
  });
}

const placeOfContact = memoByIdentity((project: Project): ReadonlyMap<string, ObjectRef[]> => {
  const out = new Map<string, ObjectRef[]>();
  for (const w of project.wires)
    for (const e of w.ends)
      if (e.at === 'cavity' && e.contact)
        out.set(e.contact, [{ type: 'cavity', id: e.connector, cavity: e.cavity }]);
  for (const c of project.connectors)
    for (const e of c.cavities)
      if (e.contact) out.set(e.contact, [{ type: 'cavity', id: c.id, cavity: e.cavity }]);
  return out;
});
