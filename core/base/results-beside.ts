import { changedSpan, type ChangedSpan } from './list-difference';

/** Results that stand beside a list, each made from the element at its place. */
export interface Beside<T, R> {
  readonly list: readonly T[];
  readonly results: readonly R[];
}

/** Results with the places at which they were made anew, ascending, and the span outside of which all stayed. */
export interface MadeBeside<T, R> extends Beside<T, R> {
  readonly made: readonly number[];
  readonly span: ChangedSpan;
}

/**
 * An element that stays at its place, or is only pushed along by others that came or went, keeps its result; `make` is asked
 * about the rest. Costs one comparison per element.
 */
export function resultsBeside<T, R>(
  list: readonly T[],
  before: Beside<T, R> | undefined,
  make: (item: T, at: number) => R,
): MadeBeside<T, R> {
  const span = before ? changedSpan(before.list, list) : { start: 0, endBefore: 0, endAfter: list.length };
  const { start, endBefore, endAfter } = span;
  const isInPlace = before !== undefined && endBefore === endAfter;
  const results =
    before === undefined ? [] : isInPlace ? before.results.slice() : before.results.slice(0, start);
  const made: number[] = [];
  for (let i = start; i < endAfter; i++) {
    if (isInPlace && before.list[i] === list[i]) continue;
    results[i] = make(list[i] as T, i);
    made.push(i);
  }
  if (before !== undefined && !isInPlace)
    for (let i = endBefore; i < before.results.length; i++) results.push(before.results[i] as R);
  return { list, results, made, span };
}
