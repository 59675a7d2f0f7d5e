import { memoByIdentity } from './memo-by-identity';

type WithId = { readonly id: string };

const indexOf = memoByIdentity((list: readonly WithId[]): ReadonlyMap<string, WithId> => {
  const map = new Map<string, WithId>();
  for (const item of list) map.set(item.id, item);
  return map;
});

/** The objects of a collection by id. The index is built once per array and shared by all who ask. */
export function byId<T extends WithId>(list: readonly T[]): ReadonlyMap<string, T> {
  return indexOf(list) as ReadonlyMap<string, T>;
}

/** Place of each id in its array, built once per array. */
export const positionsOf = memoByIdentity(
  (list: readonly WithId[]): ReadonlyMap<string, number> => new Map(list.map((item, i) => [item.id, i])),
);
