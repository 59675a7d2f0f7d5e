import type { Coded } from './coded-set-ups';
import type { Run } from './set-up';

/** Above this the passes over all exchanges take too long to be made after an edit. */
const AT_MOST = 60;
const LONGEST_PIECE = 4;

/** Moves and turns pieces of a sequence as long as that saves a change (exchanges after Or, 1976, and Croes, 1958). */
export function improveRuns(code: Coded, start: readonly Run[]): readonly Run[] {
  if (start.length > AT_MOST) return start;
  let runs = start;
  let changes = countBelow(code, runs, Infinity);
  for (let better = true; better;) {
    better = false;
    for (const candidate of neighbours(runs)) {
      const count = countBelow(code, candidate, changes);
      if (count >= changes) continue;
      [runs, changes, better] = [candidate, count, true];
      break;
    }
  }
  return runs;
}

const held = new Int32Array(16);

/** Changes of a sequence; counting ends where it is no better than `below`. */
function countBelow(code: Coded, runs: readonly Run[], below: number): number {
  held.fill(-1);
  let count = 0;
  for (const { index, swapped } of runs) {
    const want = code.demands[index]![swapped ? 1 : 0];
    for (let s = 0; s < want.length; s++) {
      const value = want[s]!;
      if (value < 0 || value === held[s]) continue;
      held[s] = value;
      if (++count >= below) return count;
    }
  }
  return count;
}

const turned = ({ index, swapped }: Run): Run => ({ index, swapped: !swapped });

/** A piece put elsewhere as it is, with its ends exchanged, or backwards; and the rest after a point exchanged. */
function* neighbours(runs: readonly Run[]): Generator<Run[]> {
  for (let from = 0; from < runs.length; from++) {
    yield [...runs.slice(0, from), ...runs.slice(from).map(turned)];
    for (let size = 1; size <= LONGEST_PIECE && from + size <= runs.length; size++) {
      const piece = runs.slice(from, from + size);
      const rest = [...runs.slice(0, from), ...runs.slice(from + size)];
      const forms = [piece, piece.map(turned), [...piece].reverse(), [...piece].reverse().map(turned)];
      for (let to = 0; to <= rest.length; to++)
        for (const form of forms) yield [...rest.slice(0, to), ...form, ...rest.slice(to)];
    }
  }
}
