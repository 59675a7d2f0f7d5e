type WithId = { readonly id: string };

/** From so many places off on, a list gets places of its own. */
const MAX_SLACK = 16;

/** Objects between the equal beginning and the equal end of two lists; more than that are entered anew. */
const MAX_MIDDLE = 200;

/**
 * Values that stand beside the objects of a list, by the id of the object. Lists of which one grew out of the other share the
 * places, which are hints: an id stands there or at most `slack` places off, where others came or went before it. Whether it
 * does is looked up in the list itself.
 */
export class PlacedMap<T> implements ReadonlyMap<string, T> {
  constructor(
    private readonly objects: readonly WithId[],
    private readonly places: Map<string, number>,
    private readonly values_: readonly T[],
    private readonly slack = 0,
  ) {}

  /** Place of an id in the list, or undefined. */
  placeOf(id: string): number | undefined {
    const at = this.places.get(id);
    if (at === undefined) return undefined;
    const { objects } = this;
    if (objects[at]?.id === id) return at;
    for (let off = 1; off <= this.slack; off++) {
      if (objects[at - off]?.id === id) return at - off;
      if (objects[at + off]?.id === id) return at + off;
    }
    return undefined;
  }

  get(id: string): T | undefined {
    const at = this.placeOf(id);
    return at === undefined ? undefined : this.values_[at];
  }

  has(id: string): boolean {
    return this.placeOf(id) !== undefined;
  }

  /** Whether both have the same ids at the same places, as far as the shorter one goes. */
  isAlike(other: PlacedMap<unknown>): boolean {
    const both = Math.min(this.objects.length, other.objects.length);
    return sameIdsUntil(this.objects, other.objects, both) === both;
  }

  /** Other values beside the same objects. */
  beside<U>(values: readonly U[]): PlacedMap<U> {
    return new PlacedMap(this.objects, this.places, values, this.slack);
  }

  /** The index of a list in which few came or went; undefined when it needs places of its own. */
  followedBy(list: readonly (WithId & T)[]): PlacedMap<T> | undefined {
    const { objects, places } = this;
    const shift = list.length - objects.length;
    const start = sameIdsUntil(objects, list, Math.min(objects.length, list.length));
    let end = list.length;
    while (end > start && end - shift > start && objects[end - shift - 1]?.id === list[end - 1]?.id) end--;
    const slack = this.slack + (end < list.length ? Math.abs(shift) : 0);
    if (slack > MAX_SLACK || end - start > MAX_MIDDLE) return undefined;
    for (let i = start; i < end; i++) {
      const { id } = list[i] as WithId;
      const at = places.get(id);
      if (at === undefined) places.set(id, i);
      else if (Math.abs(at - i) > slack) return undefined;
    }
    return new PlacedMap(list, places, list, slack);
  }

  get size(): number {
    return this.objects.length;
  }

  *entries(): MapIterator<[string, T]> {
    for (let i = 0; i < this.objects.length; i++)
      yield [(this.objects[i] as WithId).id, this.values_[i] as T];
  }

  *keys(): MapIterator<string> {
    for (const { id } of this.objects) yield id;
  }

  values(): MapIterator<T> {
    return this.values_.values();
  }

  [Symbol.iterator](): MapIterator<[string, T]> {
    return this.entries();
  }

  forEach(call: (value: T, id: string, map: ReadonlyMap<string, T>) => void): void {
    for (const [id, value] of this.entries()) call(value, id, this);
  }
}

/** How far two lists have the same ids. */
function sameIdsUntil(a: readonly WithId[], b: readonly WithId[], end: number): number {
  for (let i = 0; i < end; i++) if (a[i] !== b[i] && a[i]?.id !== b[i]?.id) return i;
  return end;
}
