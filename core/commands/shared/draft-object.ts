import type { Draft } from 'immer';
import { must } from '../../base/assert-never';
import { byId } from '../../base/by-id';
import type { Collection, Project } from '../../model/project';

type Item<C extends Collection> = Project[C][number];

/** The draft of one object, found in the plain project. Holds while the command has not removed from that array. */
export function draftObject<C extends Collection>(
  draft: Draft<Project>,
  project: Project,
  collection: C,
  id: string,
): Draft<Item<C>> {
  const at = must(byId<{ readonly id: string }>(project[collection]).placeOf(id), `${collection} ${id}`);
  return must((draft[collection] as Draft<Item<C>>[])[at], `${collection} ${id}`);
}

/** The plain object, or undefined. */
export function objectIn<C extends Collection>(
  project: Project,
  collection: C,
  id: string,
): Item<C> | undefined {
  return byId<Item<C>>(project[collection] as readonly Item<C>[]).get(id);
}

/** The reason for a refusal when one of the ids is not in the collection. */
export function missing(
  project: Project,
  collection: Collection,
  ids: readonly (string | undefined)[],
  what: string,
): string | null {
  const known = byId<{ readonly id: string }>(project[collection]);
  const gone = ids.find((id) => id !== undefined && !known.has(id));
  return gone === undefined ? null : `There is no ${what} with id ${gone}.`;
}

/** Sets fields of an object; null takes an optional field away. Fields that stay equal are not touched. */
export function applyChange<T extends object>(
  target: T,
  change: { readonly [K in keyof T]?: T[K] | null | undefined },
): void {
  for (const [key, value] of Object.entries(change) as [keyof T, T[keyof T] | null | undefined][]) {
    if (value === undefined) continue;
    if (value === null) delete target[key];
    else if (target[key] !== value) target[key] = value;
  }
}

/** Takes objects out of an array: one patch, however many there are. */
export function removeObjects(
  draft: Draft<Project>,
  project: Project,
  collection: Collection,
  gone: ReadonlySet<string>,
): void {
  if (gone.size === 0) return;
  const known = byId<{ readonly id: string }>(project[collection]);
  if (gone.size < project[collection].length && ![...gone].some((id) => known.has(id))) return;
  const rest = (project[collection] as readonly { id: string }[]).filter((o) => !gone.has(o.id));
  if (rest.length !== project[collection].length) Object.assign(draft, { [collection]: rest });
}
