/** The same object without the fields that hold nothing. */
export function withoutUndefined<T extends object>(item: T): T {
  return Object.fromEntries(Object.entries(item).filter(([, v]) => v !== undefined)) as T;
}
