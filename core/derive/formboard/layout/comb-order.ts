import type { Terminal, Tie } from './terminals';

/** A branch off the trunk, or the end of the trunk. */
export interface Tooth {
  readonly terminal: Terminal;
  readonly side: -1 | 1;
}

/** A place of the trunk where branches leave: at most one to either side. */
export interface Breakout {
  readonly teeth: readonly Tooth[];
  readonly at: number;
}

/** Nearer to each other along the trunk than this, ends stand side by side, mm. */
const TOGETHER_MM = 60;

/** Whether more wire runs to the side than up and down; where none tells, whether the ends spread more to the side. */
export function runsAcross(ends: readonly Terminal[], ties: readonly Tie[]): boolean {
  const at = new Map(ends.map((t) => [t.key, t.at]));
  const run = (k: 'x' | 'y'): number =>
    ties.reduce((sum, t) => {
      const [a, b] = [at.get(t.a), at.get(t.b)];
      return a && b ? sum + t.wires * Math.abs(a[k] - b[k]) : sum;
    }, 0);
  const [x, y] = [run('x'), run('y')];
  return x === y ? spread(ends, 'x') >= spread(ends, 'y') : x > y;
}

/**
 * Along the trunk; those that stand side by side fan out towards the nearer end of it, the one nearest to the middle line
 * farthest out.
 */
export function inOrder(
  ends: readonly Terminal[],
  along: (t: Terminal) => number,
  across: (t: Terminal) => number,
): readonly Terminal[] {
  const places = ends.map(along);
  const centre = (Math.min(...places) + Math.max(...places)) / 2;
  const middle = mean(ends.map(across));
  const off = (t: Terminal): number => Math.abs(across(t) - middle);
  const sorted = [...ends].sort((a, b) => along(a) - along(b) || (a.key < b.key ? -1 : 1));
  const rows: Terminal[][] = [];
  for (const t of sorted) {
    const row = rows.at(-1);
    if (row && along(t) - along(row[0]!) < TOGETHER_MM) row.push(t);
    else rows.push([t]);
  }
  return rows.flatMap((row) => {
    const outwards = mean(row.map(along)) < centre ? 1 : -1;
    return row.sort(
      (a, b) => outwards * (off(a) - off(b)) || across(a) - across(b) || (a.key < b.key ? -1 : 1),
    );
  });
}

const spread = (list: readonly Terminal[], k: 'x' | 'y'): number =>
  Math.max(...list.map((t) => t.at[k])) - Math.min(...list.map((t) => t.at[k]));

export const mean = (list: readonly number[]): number =>
  list.reduce((a, b) => a + b, 0) / Math.max(1, list.length);

/** Neighbours that stand on different sides share a breakout where they are near each other. */
export function breakoutsOf(
  inner: readonly Terminal[],
  along: (t: Terminal) => number,
  across: (t: Terminal) => number,
): readonly Breakout[] {
  const middle = mean(inner.map(across));
  const level = inner.every((t) => Math.abs(across(t) - middle) < 1);
  const out: Breakout[] = [];
  inner.forEach((terminal, i) => {
    const side = (level ? i % 2 === 0 : across(terminal) < middle) ? -1 : 1;
    const before = out.at(-1);
    const shares =
      before?.teeth.length === 1 &&
      before.teeth[0]!.side !== side &&
      along(terminal) - before.at < TOGETHER_MM;
    if (shares) out[out.length - 1] = { ...before, teeth: [...before.teeth, { terminal, side }] };
    else out.push({ teeth: [{ terminal, side }], at: along(terminal) });
  });
  return out;
}
