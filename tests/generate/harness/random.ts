/** A repeatable source of numbers in [0, 1): mulberry32, public domain, by T. Ettinger. */
export function createRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from `from` up to and without `to`. */
export const between = (random: () => number, from: number, to: number): number =>
  from + Math.floor(random() * (to - from));
