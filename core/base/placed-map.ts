type WithId = { readonly id: string };

/**
 * Values that stand beside the objects of a list, by the id of the object. Lists of which one grew out of the other share the
 * places: each id has one place in all of them, and whether this list has it there is looked up in the list itself.
 */
export class PlacedMap<T> implements ReadonlyMap<string, T> {
  constructor(
    private readonly objects: readonly WithId[],
    private readonly places: Map<string, number>,
    private readonly values_: readonly T[],
  ) {}

  /** Place of an id in the list, or undefined. */
  placeOf(id: string): number | undefined {
    const at = this.places.get(id);
    return at !== undefined && this.objects[at]?.id === id ? at : undefined;
  }

  get(id: string): T | undefined {
    const at = this.placeOf(id);
    return at === undefined ? undefined : this.values_[at];
  }

  has(id: string): boolean {
    return this.placeOf(id) !== undefined;
  }

  /** Whether both share the places, so that an id that is in both has the same place. */
  hasPlacesOf(other: PlacedMap<unknown>): boolean {
    return this.places === other.places;
  }

  /** Other values beside the same objects. */
  beside<U>(values: readonly U[]): PlacedMap<U> {
    return new PlacedMap(this.objects, this.places, values);
  }

  /**
   * The index of a list that has the same ids at its beginning, and perhaps more; undefined when one of these has another
   * place in a list that shares the places.
   */
  extended(list: readonly (WithId & T)[]): PlacedMap<T> | undefined {
    for (let i = this.objects.length; i < list.length; i++) {
      const { id } = list[i] as WithId;
      const at = this.places.get(id);
      if (at !== undefined && at !== i) return undefined;
      this.places.set(id, i);
    }
    return new PlacedMap(list, this.places, list);
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
