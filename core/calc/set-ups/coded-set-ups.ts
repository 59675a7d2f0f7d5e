import { demandsOf, STATIONS, type SetUp } from './set-up';

/** Set-ups as numbers, so that a search can compare and count them fast. Values of one kind share one row of numbers. */
export interface Coded {
  readonly stations: number;
  /** By set-up and way round: the value that each station must hold, -1 for none. */
  readonly demands: readonly (readonly [Int32Array, Int32Array])[];
  /** No sequence has fewer changes: every value is mounted at least once. */
  readonly least: number;
  /** By value: how many of the set-ups that are not done need it. */
  neededBy(done: Uint8Array): Int32Array;
  /** Least number of changes after set-up `i` is done too, with the machine as it then stands. */
  stillToCome(needed: Int32Array, i: number, held: Int32Array): number;
}

/** Stations of one kind take the same things: an applicator fits side A and side B. */
const KIND_OF = STATIONS.map((s) => s.split(' ')[0]!);

export function coded(setUps: readonly SetUp[]): Coded {
  const numbers = new Map<string, number>();
  const number = (station: number, value: string | undefined): number => {
    if (value === undefined) return -1;
    const key = `${KIND_OF[station]!} ${value}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, numbers.size);
    return numbers.size - 1;
  };
  const row = (setUp: SetUp, swapped: boolean): Int32Array =>
    Int32Array.from(demandsOf(setUp, swapped), (value, station) => number(station, value));
  const demands = setUps.map((s) => [row(s, false), row(s, true)] as const);
  const values = demands.map(([straight]) => [...new Set(straight)].filter((v) => v >= 0));
  // A lead with the same thing at both ends needs it twice.
  const twice = demands.map(([d]) => [1, 2, 3].filter((s) => d[s]! >= 0 && d[s] === d[s + 3]).length);

  function neededBy(done: Uint8Array): Int32Array {
    const needed = new Int32Array(numbers.size);
    values.forEach((list, i) => {
      if (!done[i]) for (const v of list) needed[v]!++;
    });
    return needed;
  }

  function stillToCome(needed: Int32Array, i: number, held: Int32Array): number {
    let count = 0;
    for (let v = 0; v < needed.length; v++) {
      if (needed[v] === 0) continue;
      if (needed[v] === 1 && values[i]!.includes(v)) continue;
      if (!held.includes(v)) count++;
    }
    return count;
  }

  return {
    stations: STATIONS.length,
    demands,
    least: numbers.size + [0, 1, 2].reduce((sum, s) => sum + distinctTwice(demands, twice, s), 0),
    neededBy,
    stillToCome,
  };
}

/** Values that some lead needs at both of its ends, of one kind of station: they are mounted on both sides. */
function distinctTwice(
  demands: readonly (readonly [Int32Array, Int32Array])[],
  twice: readonly number[],
  kind: number,
): number {
  const seen = new Set<number>();
  demands.forEach(([d], i) => {
    const value = d[kind + 1]!;
    if (twice[i]! > 0 && value >= 0 && value === d[kind + 4]) seen.add(value);
  });
  return seen.size;
}
