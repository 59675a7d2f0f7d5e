import { byId } from '../base/by-id';
import { COLLECTIONS, type Collection, type Project } from '../model/project';

/** A value inside an object that differs; undefined where it is not there. */
export interface FieldChange {
  /** "ends[0].contact". */
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** One object, or the project itself, that differs between two states. */
export interface ObjectChange {
  readonly collection: Collection | 'project';
  readonly id: string;
  readonly what: 'added' | 'removed' | 'changed';
  /** Of a changed object: what of it. */
  readonly fields: readonly FieldChange[];
}

/**
 * What differs between two states of a project, by the ids of its objects, in the order of the file. Objects that are
 * identical are skipped by identity, so the work goes with what a command touched.
 */
export function changesOf(before: Project, after: Project): readonly ObjectChange[] {
  if (before === after) return [];
  const own = fieldChanges(ownFields(before), ownFields(after));
  return [
    ...(own.length > 0
      ? [{ collection: 'project', id: after.id, what: 'changed', fields: own } as const]
      : []),
    ...COLLECTIONS.flatMap((c) => collectionChanges(c, before[c], after[c])),
  ];
}

type WithId = { readonly id: string };

function collectionChanges(
  collection: Collection,
  before: readonly WithId[],
  after: readonly WithId[],
): readonly ObjectChange[] {
  if (before === after) return [];
  const old = byId(before);
  const fresh = byId(after);
  const kept = after.flatMap((object): ObjectChange[] => {
    const was = old.get(object.id);
    if (!was) return [{ collection, id: object.id, what: 'added', fields: [] }];
    if (was === object) return [];
    const fields = fieldChanges(was, object);
    return fields.length > 0 ? [{ collection, id: object.id, what: 'changed', fields }] : [];
  });
  const gone = before.filter((object) => !fresh.has(object.id));
  return [...gone.map(({ id }): ObjectChange => ({ collection, id, what: 'removed', fields: [] })), ...kept];
}

/** The project without its collections. */
function ownFields(project: Project): Record<string, unknown> {
  const lists = new Set<string>(COLLECTIONS);
  return Object.fromEntries(Object.entries(project).filter(([key]) => !lists.has(key)));
}

/** Leaves that differ. A list of objects with ids is compared by id, any other by place. */
function fieldChanges(before: unknown, after: unknown, path = ''): FieldChange[] {
  if (Object.is(before, after)) return [];
  if (isObject(before) && isObject(after))
    return [...new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((key) =>
      fieldChanges(before[key], after[key], path ? `${path}.${key}` : key),
    );
  if (Array.isArray(before) && Array.isArray(after)) {
    const keyed = entriesByKey(before) && entriesByKey(after);
    if (!keyed)
      return Array.from({ length: Math.max(before.length, after.length) }).flatMap((_, i) =>
        fieldChanges(before[i], after[i], `${path}[${i}]`),
      );
    const old = entriesByKey(before) as Map<string, unknown>;
    const fresh = entriesByKey(after) as Map<string, unknown>;
    return [...new Set([...old.keys(), ...fresh.keys()])].flatMap((key) =>
      fieldChanges(old.get(key), fresh.get(key), `${path}[${key}]`),
    );
  }
  return [{ field: path, before, after }];
}

/** Entries of a list by what names them: a cavity state its cavity, a limit its id. */
export function entriesByKey(list: readonly unknown[]): Map<string, unknown> | null {
  const out = new Map<string, unknown>();
  for (const item of list) {
    const key = isObject(item) ? (item['id'] ?? item['cavity']) : undefined;
    if (typeof key !== 'string' || item === null || out.has(key) || isWireEnd(item)) return null;
    out.set(key, item);
  }
  return out;
}

/** The ends of a wire are the first and the second, whatever they name. */
const isWireEnd = (item: unknown): boolean => isObject(item) && 'at' in item;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
