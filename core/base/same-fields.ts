/**
 * `next` if any field differs from `previous`, else `previous` itself, so that whoever compares by identity
 * sees that nothing changed. Fields compare by identity; array fields element by element.
 */
export function reuse<T extends object>(previous: T | undefined, next: T): T {
  if (!previous) return next;
  const keys = Object.keys(next) as (keyof T)[];
  if (keys.length !== Object.keys(previous).length) return next;
  for (const key of keys) if (!sameField(previous[key], next[key])) return next;
  return previous;
}

/** `previous` if both hold the same elements in the same order, else `next`. */
export function reuseList<T>(previous: readonly T[] | undefined, next: readonly T[]): readonly T[] {
  return previous && sameElements(previous, next) ? previous : next;
}

function sameField(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  return Array.isArray(a) && Array.isArray(b) && sameElements(a, b);
}

function sameElements(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
  return true;
}
