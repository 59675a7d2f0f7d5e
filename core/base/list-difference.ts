/** Elements that were taken out of a list and put into it, by identity. A change of order alone is none. */
export interface ListDifference<T> {
  readonly gone: readonly T[];
  readonly fresh: readonly T[];
}

const NONE: ListDifference<never> = { gone: [], fresh: [] };

/** Costs one comparison per element where most of the list stayed as it was. */
export function listDifference<T>(before: readonly T[], after: readonly T[]): ListDifference<T> {
  if (before === after) return NONE;
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let [endBefore, endAfter] = [before.length, after.length];
  while (endBefore > start && endAfter > start && before[endBefore - 1] === after[endAfter - 1]) {
    endBefore--;
    endAfter--;
  }
  let gone = before.slice(start, endBefore);
  let fresh = after.slice(start, endAfter);
  if (gone.length > 0 && fresh.length > 0) {
    const was = new Set(gone);
    const is = new Set(fresh);
    gone = gone.filter((item) => !is.has(item));
    fresh = fresh.filter((item) => !was.has(item));
  }
  return gone.length === 0 && fresh.length === 0 ? NONE : { gone, fresh };
}
