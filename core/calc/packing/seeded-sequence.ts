/**
 * Numbers in [0, 1) that look like chance and are the same every time, so the same wires give the same bundle on
 * every machine. Linear congruential generator modulo 2^32 with the constants of Knuth and Lewis (Numerical Recipes,
 * 2nd edition, section 7.1); its quality is ample for starting points.
 */
export function seededSequence(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
