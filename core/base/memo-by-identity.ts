/** Remembers the result for an object for as long as that very object lives. */
export function memoByIdentity<In extends object, Out>(compute: (input: In) => Out): (input: In) => Out {
  const seen = new WeakMap<In, { out: Out }>();
  return (input) => {
    const hit = seen.get(input);
    if (hit) return hit.out;
    const out = compute(input);
    seen.set(input, { out });
    return out;
  };
}
