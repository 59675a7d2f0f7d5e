import { distance, type Point } from '../../../base/point';
import { addRun, distancesFrom, isFree, placeOn, type LayoutBoard } from './board';
import type { Terminal, Tie } from './terminals';

/** A run of the board that is cut in its middle, to have a place where a branch can leave. */
export interface Cut {
  /** Undefined where the run is itself to be made. */
  readonly segment: string | undefined;
  readonly from: string;
  readonly to: string;
  readonly atMm: number;
  readonly key: string;
}

const SHORTEST_BRANCH_MM = 60;
const GAP_MM = 20;
const ANGLES = [0, ...Array.from({ length: 12 }, (_, i) => [15 * (i + 1), -15 * (i + 1)]).flat()];
const LENGTHS = [1, 1.25, 0.8, 1.6, 2.2, 3, 0.6, 4, 6];

/**
 * Hangs a terminal on what is laid out already: on the node, free of connectors, that is nearest to those whom its wires go
 * to. A splice sits on that node; anything else gets a straight branch in the direction in which it stands on the diagram, or
 * the next one that is free. False where no run is free.
 */
export function attach(
  board: LayoutBoard,
  terminal: Terminal,
  partners: readonly { readonly terminal: Terminal; readonly node: string; readonly tie: Tie }[],
  cuts: Cut[],
): { readonly node: string; readonly isNew: boolean } | null {
  const root = rootFor(board, partners, cuts);
  if (terminal.is === 'splice' && !board.ends.has(root)) return { node: root, isNew: false };
  const from = meanPlace(partners.map((p) => p.terminal.at));
  const base =
    distance(from, terminal.at) < 1 ? 0 : Math.atan2(terminal.at.y - from.y, terminal.at.x - from.x);
  const along = distancesFrom(board, root);
  const typed = partners.flatMap(({ tie, node }) =>
    tie.typedMm === undefined ? [] : [tie.typedMm - (along.get(node) ?? 0)],
  );
  const wanted = typed.length > 0 ? Math.max(...typed) : distance(from, terminal.at) / 2;
  const lengthMm = Math.max(typed.length > 0 ? GAP_MM : SHORTEST_BRANCH_MM, wanted);
  const roomMm = Math.max(terminal.acrossMm / 2, terminal.alongMm) + GAP_MM;
  const start = placeOn(board, root);
  for (const room of [roomMm, roomMm / 2, 2])
    for (const by of LENGTHS)
      for (const turn of ANGLES) {
        const angle = base + (turn * Math.PI) / 180;
        const at = rounded({
          x: start.x + Math.cos(angle) * lengthMm * by,
          y: start.y + Math.sin(angle) * lengthMm * by,
        });
        if (!isFree(board, root, { at, roomMm: room })) continue;
        board.nodes.set(terminal.key, at);
        addRun(board, root, terminal.key);
        if (terminal.is !== 'splice') board.ends.add(terminal.key);
        return { node: terminal.key, isNew: true };
      }
  return null;
}

const rounded = (p: Point): Point => ({ x: Math.round(p.x * 1000) / 1000, y: Math.round(p.y * 1000) / 1000 });

const meanPlace = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
  y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
});

/** The node to branch off from; where only connectors stand on nodes, the middle of the longest segment becomes one. */
function rootFor(
  board: LayoutBoard,
  partners: readonly { readonly node: string; readonly tie: Tie }[],
  cuts: Cut[],
): string {
  const [first] = partners;
  const piece = distancesFrom(board, first!.node);
  const along = partners.map((p) => ({ wires: p.tie.wires, from: distancesFrom(board, p.node) }));
  const cost = (node: string): number => along.reduce((sum, p) => sum + p.wires * (p.from.get(node) ?? 0), 0);
  const inner = [...piece.keys()].filter((n) => !board.ends.has(n));
  if (inner.length > 0) {
    const costs = new Map(inner.map((n) => [n, cost(n)]));
    return inner.reduce((best, n) => (costs.get(n)! < costs.get(best)! - 1e-9 ? n : best));
  }
  const runs = board.runs.filter((r) => piece.has(r.from));
  if (runs.length === 0) return first!.node;
  const longest = runs.reduce((best, r) => (r.lengthMm > best.lengthMm ? r : best));
  return cutInTheMiddle(board, longest, cuts);
}

function cutInTheMiddle(board: LayoutBoard, run: LayoutBoard['runs'][number], cuts: Cut[]): string {
  const key = `middle of ${run.from} ${run.to}`;
  const lines = run.points.slice(1).map((p, i) => distance(run.points[i]!, p));
  const half = lines.reduce((a, b) => a + b, 0) / 2;
  let before = 0;
  let leg = 0;
  while (leg < lines.length - 1 && before + lines[leg]! < half) before += lines[leg++]!;
  const [a, b] = [run.points[leg]!, run.points[leg + 1]!];
  const t = (half - before) / lines[leg]!;
  const at = { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
  board.nodes.set(key, at);
  const lengthMm = run.lengthMm / 2;
  board.runs.splice(
    board.runs.indexOf(run),
    1,
    {
      segment: run.segment,
      from: run.from,
      to: key,
      points: [...run.points.slice(0, leg + 1), at],
      lengthMm,
    },
    { segment: undefined, from: key, to: run.to, points: [at, ...run.points.slice(leg + 1)], lengthMm },
  );
  cuts.push({ segment: run.segment, from: run.from, to: run.to, atMm: lengthMm, key });
  return key;
}

/**
 * Joins pieces of the board by straight runs between their nearest nodes, so that nothing crosses; nodes that carry no
 * connector are liked better. Gives the new runs; null where no run is free.
 */
export function joinPieces(
  board: LayoutBoard,
  nodes: readonly string[],
): readonly (readonly [string, string])[] | null {
  const out: [string, string][] = [];
  for (;;) {
    const pieces: (readonly string[])[] = [];
    const seen = new Set<string>();
    for (const n of nodes) {
      if (seen.has(n)) continue;
      const piece = [...distancesFrom(board, n).keys()];
      for (const p of piece) seen.add(p);
      pieces.push(piece);
    }
    if (pieces.length < 2) return out;
    const pair = nearestPair(board, pieces);
    if (!pair) return null;
    addRun(board, ...pair);
    out.push(pair);
  }
}

const PENALTY_MM = 100;

function nearestPair(
  board: LayoutBoard,
  pieces: readonly (readonly string[])[],
): [string, string] | undefined {
  const pairs: { readonly pair: [string, string]; readonly cost: number }[] = [];
  pieces.forEach((p, i) => {
    for (const q of pieces.slice(i + 1))
      for (const a of p)
        for (const b of q) {
          const busy = [a, b].filter(
            (n) => board.ends.has(n) && board.runs.some((r) => r.from === n || r.to === n),
          );
          pairs.push({
            pair: [a, b],
            cost: distance(placeOn(board, a), placeOn(board, b)) + PENALTY_MM * busy.length,
          });
        }
  });
  pairs.sort((x, y) => x.cost - y.cost);
  return pairs.find(({ pair: [a, b] }) => isFree(board, a, { node: b }))?.pair;
}
