/** Elements that were taken out of a list and put into it, by identity. A change of order alone is none. */
export interface ListDifference<T> {
  readonly gone: readonly T[];
  readonly fresh: readonly T[];
}

/** What lies between the equal beginnings and the equal ends of two lists. */
export interface ChangedSpan {
  readonly start: number;
  readonly endBefore: number;
  readonly endAfter: number;
}

const NONE: ListDifference<never> = { gone: [], fresh: [] };

/** Costs one comparison per element that stayed. */
export function changedSpan(before: readonly unknown[], after: readonly unknown[]): ChangedSpan {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let [endBefore, endAfter] = [before.length, after.length];
  while (endBefore > start && endAfter > start && before[endBefore - 1] === after[endAfter - 1]) {
    endBefore--;
    endAfter--;
  }
  return { start, endBefore, endAfter };
}

/** Costs one comparison per element where most of the list stayed as it was. */
export function listDifference<T>(before: readonly T[], after: readonly T[]): ListDifference<T> {
  if (before === after) return NONE;
  const { start, endBefore, endAfter } = changedSpan(before, after);
  let gone: T[];
  let fresh: T[];
  if (endBefore === endAfter) {
    // Mostly replaced in place: few differ, however far apart they stand.
    gone = [];
    fresh = [];
    for (let i = start; i < endAfter; i++) {
      if (before[i] === after[i]) continue;
      gone.push(before[i] as T);
      fresh.push(after[i] as T);
    }
  } else {
    gone = before.slice(start, endBefore);
    fresh = after.slice(start, endAfter);
  }
  if (gone.length > 0 && fresh.length > 0) {
    const was = new Set(gone);
    const is = new Set(fresh);
    gone = gone.filter((item) => !is.has(item));
    fresh = fresh.filter((item) => !was.has(item));
  }
  return gone.length === 0 && fresh.length === 0 ? NONE : { gone, fresh };
}
