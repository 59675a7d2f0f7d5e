import { coded, type Coded } from './coded-set-ups';
import { improveRuns } from './improve-runs';
import { countChanges, type Run, type SetUp } from './set-up';

export interface OrderedSetUps {
  readonly runs: readonly Run[];
  readonly changes: number;
  /** No sequence can have fewer. */
  readonly atLeast: number;
  /** True where `changes` is the least that there is. */
  readonly proven: boolean;
}

/** Expansions that a search may make: a few milliseconds, and a second look where it can prove the result. */
const QUICK = 40_000;
const THOROUGH = 250_000;
const PROOF_AT_MOST = 16;

/**
 * A sequence of set-ups, and which way round each runs, with as few changes of spool, applicators, stripping and seals as a
 * search finds. Layer by layer: all beginnings of k set-ups that differ in what is done and what the machine holds, the
 * cheapest first by changes so far plus the least that is still to come (each value that is needed and not mounted costs one
 * change). A search that dropped none of them, or that reaches the bound, has the optimum.
 */
export function orderSetUps(setUps: readonly SetUp[]): OrderedSetUps {
  if (setUps.length === 0) return { runs: [], changes: 0, atLeast: 0, proven: true };
  const code = coded(setUps);
  const perWidth = 2 * setUps.length ** 2;
  const quick = search(code, Math.max(3, Math.floor(QUICK / perWidth)), Infinity);
  const asGiven = setUps.map((_, index): Run => ({ index, swapped: false }));
  const best = fewer(setUps, improveRuns(code, quick.runs ?? asGiven), asGiven);
  const found = (result: typeof best, proven: boolean): OrderedSetUps => {
    const sure = proven || result.changes === code.least;
    return { ...result, atLeast: sure ? result.changes : code.least, proven: sure };
  };
  if (quick.complete || best.changes === code.least) return found(best, true);
  if (setUps.length > PROOF_AT_MOST) return found(best, false);
  const again = search(code, Math.floor(THOROUGH / perWidth), best.changes);
  if (!again.runs) return found(best, again.complete);
  return found({ runs: again.runs, changes: countChanges(setUps, again.runs) }, again.complete);
}

/** A narrow search may miss what stands there already. */
function fewer(setUps: readonly SetUp[], found: readonly Run[], given: readonly Run[]) {
  const [changes, before] = [countChanges(setUps, found), countChanges(setUps, given)];
  return changes <= before ? { runs: found, changes } : { runs: given, changes: before };
}

interface Beginning {
  readonly done: Uint8Array;
  /** What each station holds; -1 for nothing. */
  readonly held: Int32Array;
  readonly cost: number;
  readonly bound: number;
  readonly run: Run | undefined;
  readonly before: Beginning | undefined;
}

/** The best sequence cheaper than `below`, if there is one; complete where nothing was dropped for want of room. */
function search(code: Coded, width: number, below: number): { runs: Run[] | undefined; complete: boolean } {
  const n = code.demands.length;
  let complete = true;
  let layer: Beginning[] = [
    {
      done: new Uint8Array(n),
      held: new Int32Array(code.stations).fill(-1),
      cost: 0,
      bound: 0,
      run: undefined,
      before: undefined,
    },
  ];
  for (let depth = 0; depth < n; depth++) {
    const next = new Map<string, Beginning>();
    for (const beginning of layer) expand(code, beginning, below, next);
    layer = [...next.values()].sort((x, y) => x.bound - y.bound || x.cost - y.cost);
    if (layer.length > width) {
      layer.length = width;
      complete = false;
    }
  }
  const [end] = layer;
  if (!end) return { runs: undefined, complete };
  const runs: Run[] = [];
  for (let at: Beginning | undefined = end; at?.run; at = at.before) runs.push(at.run);
  return { runs: runs.reverse(), complete };
}

function expand(code: Coded, from: Beginning, below: number, next: Map<string, Beginning>): void {
  const left = code.neededBy(from.done);
  for (let i = 0; i < from.done.length; i++) {
    if (from.done[i]) continue;
    for (const turn of [0, 1] as const) {
      const want = code.demands[i]![turn];
      let cost = from.cost;
      const held = from.held.slice();
      for (let s = 0; s < want.length; s++) {
        const value = want[s]!;
        if (value < 0 || value === held[s]) continue;
        held[s] = value;
        cost++;
      }
      const bound = cost + code.stillToCome(left, i, held);
      if (bound >= below) continue;
      const done = from.done.slice();
      done[i] = 1;
      const key = `${done.join('')} ${held.join(',')}`;
      const known = next.get(key);
      if (known && known.cost <= cost) continue;
      next.set(key, { done, held, cost, bound, run: { index: i, swapped: turn === 1 }, before: from });
    }
  }
}
