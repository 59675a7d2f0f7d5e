import { memoByIdentity } from './memo-by-identity';

/** Remembers the result for two objects for as long as both live. */
export function memoByPair<A extends object, B extends object, Out>(
  compute: (a: A, b: B) => Out,
): (a: A, b: B) => Out {
  const withFirst = memoByIdentity((a: A) => memoByIdentity((b: B) => compute(a, b)));
  return (a, b) => withFirst(a)(b);
}
