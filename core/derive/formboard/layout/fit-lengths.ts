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
  const neighbours = neighboursOf(runs);
  const ways = known
    .map((k) => ({ ...k, on: wayOf(neighbours, k.from, k.to) }))
    .filter((k) => k.on.length > 0);
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

type Neighbours = ReadonlyMap<string, readonly { readonly to: string; readonly run: number }[]>;

function neighboursOf(runs: readonly FitRun[]): Neighbours {
  const out = new Map<string, { to: string; run: number }[]>();
  runs.forEach((r, run) => {
    for (const [at, to] of [
      [r.from, r.to],
      [r.to, r.from],
    ] as const)
      // prettier-ignore
      out.set(at, [...(out.get(at) ?? []), { to, run }]);
  });
  return out;
}

/** Places of the runs on the way between two places of a tree; none where nothing joins them. */
function wayOf(at: Neighbours, from: string, to: string): readonly number[] {
  const before = new Map<string, { readonly node: string; readonly run: number }>();
  const open = [from];
  for (let here = open.pop(); here !== undefined && !before.has(to); here = open.pop())
    for (const next of at.get(here) ?? []) {
      if (next.to === from || before.has(next.to)) continue;
      before.set(next.to, { node: here, run: next.run });
      open.push(next.to);
    }
  const out: number[] = [];
  for (let here = to; here !== from;) {
    const step = before.get(here);
    if (!step) return [];
    out.push(step.run);
    here = step.node;
  }
  return out;
}
