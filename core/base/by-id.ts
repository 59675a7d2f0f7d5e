import { PlacedMap } from './placed-map';

type WithId = { readonly id: string };
type Index = PlacedMap<WithId>;

const indexes = new WeakMap<readonly WithId[], Index>();

/** The objects of a collection by id. The index is built once per array and shared by all who ask. */
export function byId<T extends WithId>(list: readonly T[]): PlacedMap<T> {
  let index = indexes.get(list);
  if (!index) {
    const places = new Map<string, number>();
    for (let i = 0; i < list.length; i++) places.set((list[i] as T).id, i);
    indexes.set(list, (index = new PlacedMap(list, places, list)));
  }
  return index as PlacedMap<T>;
}

/** Lets a list share the index of the one that it came from, where that is possible. Otherwise it gets its own when asked. */
export function followIndex(before: readonly WithId[], after: readonly WithId[]): void {
  const index = indexes.get(before);
  if (!index || indexes.has(after)) return;
  const followed = index.followedBy(after);
  if (followed) indexes.set(after, followed);
}
