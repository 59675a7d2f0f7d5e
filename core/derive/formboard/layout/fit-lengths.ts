/** A run of a tree, with the length that it had best have and the least that it must have, mm. */
export interface FitRun {
  readonly from: string;
  readonly to: string;
  readonly leastMm: number;
  readonly wantedMm: number;
}

/** A length that is known along the tree from one place to another, mm. */
export interface KnownLength {
  readonly from: string;
  readonly to: string;
  readonly lengthMm: number;
}

const ROUNDS = 400;

/**
 * Lengths of the runs of a tree that come to the known lengths as near as the least lengths allow, starting from the wanted
 * ones: each known length in turn spreads what it lacks evenly over the runs on its way (the method of Kaczmarz, 1937).
 */
export function fitLengths(runs: readonly FitRun[], known: readonly KnownLength[]): readonly number[] {
  const lengths = runs.map((r) => Math.max(r.leastMm, r.wantedMm));
  const ways = known.map((k) => ({ ...k, on: wayOf(runs, k.from, k.to) })).filter((k) => k.on.length > 0);
  for (let round = 0; round < ROUNDS; round++) {
    let worst = 0;
    for (const { on, lengthMm } of ways) {
      const off = lengthMm - on.reduce((sum, i) => sum + lengths[i]!, 0);
      worst = Math.max(worst, Math.abs(off));
      // A run at its least length cannot give; the others give its part.
      const free = off < 0 ? on.filter((i) => lengths[i]! > runs[i]!.leastMm) : on;
      for (const i of free) lengths[i] = Math.max(runs[i]!.leastMm, lengths[i]! + off / free.length);
    }
    if (worst < 1e-9) break;
  }
  return lengths;
}

/** Places of the runs on the way between two places of a tree; none where nothing joins them. */
function wayOf(runs: readonly FitRun[], from: string, to: string): readonly number[] {
  const before = new Map<string, number>();
  const open = [from];
  for (let at = open.pop(); at !== undefined; at = open.pop())
    runs.forEach((r, i) => {
      const next = r.from === at ? r.to : r.to === at ? r.from : undefined;
      if (next === undefined || next === from || before.has(next)) return;
      before.set(next, i);
      open.push(next);
    });
  const out: number[] = [];
  for (let at = to; at !== from;) {
    const i = before.get(at);
    if (i === undefined) return [];
    out.push(i);
    at = runs[i]!.from === at ? runs[i]!.to : runs[i]!.from;
  }
  return out;
}
