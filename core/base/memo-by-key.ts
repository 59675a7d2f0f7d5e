/**
 * Remembers results by what the inputs say, not by which objects they are: for work that is dear and asked for alike in many
 * places. At most so many are kept; the one that was asked for longest ago goes first.
 */
export function memoByKey<In, Out>(
  keyOf: (input: In) => string,
  atMost: number,
  compute: (input: In) => Out,
): (input: In) => Out {
  const known = new Map<string, { readonly out: Out }>();
  return (input) => {
    const key = keyOf(input);
    const hit = known.get(key) ?? { out: compute(input) };
    // Put at the end anew, so that the first of the map is the one to go.
    known.delete(key);
    known.set(key, hit);
    const [first] = known.size > atMost ? known.keys() : [];
    if (first !== undefined) known.delete(first);
    return hit.out;
  };
}
