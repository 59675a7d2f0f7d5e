import { compareNatural } from '../../base/stable-order';
import { STAGES, type BuildOp } from './build-op';

export type SortedOps =
  | { readonly ok: true; readonly ops: readonly BuildOp[] }
  /** Operations that wait for each other. */
  | { readonly ok: false; readonly ring: readonly string[] };

/**
 * Topological order (Kahn, Communications of the ACM 5, 1962): of all operations whose needs are done, the one of the earliest
 * stage comes first, then by what gathers them, then by place. The same operations give the same order.
 */
export function sortOps(ops: readonly BuildOp[]): SortedOps {
  const stageOf = new Map(STAGES.map((s, i) => [s, i]));
  const ranked = [...ops].sort(
    (a, b) =>
      stageOf.get(a.stage)! - stageOf.get(b.stage)! ||
      compareNatural(a.gather, b.gather) ||
      compareNatural(a.place, b.place) ||
      compareNatural(a.id, b.id),
  );
  const rank = new Map(ranked.map((op, i) => [op.id, i]));
  const waiting = ranked.map(() => 0);
  const after: number[][] = ranked.map(() => []);
  ranked.forEach((op, i) => {
    for (const id of new Set(op.needs.map((n) => n.op))) {
      const before = rank.get(id);
      if (before === undefined) continue;
      after[before]!.push(i);
      waiting[i]!++;
    }
  });
  const ready = new Ready();
  waiting.forEach((n, i) => {
    if (n === 0) ready.put(i);
  });
  const out: BuildOp[] = [];
  for (let i = ready.take(); i !== undefined; i = ready.take()) {
    out.push(ranked[i]!);
    for (const next of after[i]!) if (--waiting[next]! === 0) ready.put(next);
  }
  if (out.length === ranked.length) return { ok: true, ops: out };
  return { ok: false, ring: ranked.filter((_, i) => waiting[i]! > 0).map((op) => op.id) };
}

/** Ranks, the smallest first: a binary heap. */
class Ready {
  private readonly heap: number[] = [];

  put(rank: number): void {
    const { heap } = this;
    let i = heap.push(rank) - 1;
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (heap[up]! <= rank) break;
      heap[i] = heap[up]!;
      i = up;
    }
    heap[i] = rank;
  }

  take(): number | undefined {
    const { heap } = this;
    const top = heap[0];
    const last = heap.pop();
    if (top === undefined || last === undefined || heap.length === 0) return top;
    let i = 0;
    for (;;) {
      let child = 2 * i + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && heap[child + 1]! < heap[child]!) child++;
      if (heap[child]! >= last) break;
      heap[i] = heap[child]!;
      i = child;
    }
    heap[i] = last;
    return top;
  }
}
