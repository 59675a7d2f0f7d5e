import type { Point } from '../../../base/point';
import { ok, problem, type Result } from '../../../base/result';
import type { Project } from '../../../model/project';
import { deriveHarness } from '../../derive-harness';
import { attach, joinPieces, type Cut } from './attach';
import { addRun, boardOf, boxOfBoard, type LayoutBoard } from './board';
import { combLayout } from './comb';
import { bundledSets, terminalsOf, wiredSets, type Terminal, type Tie } from './terminals';

/** What is to be added to the formboard. Nodes are named by key where they are new, else by id. */
export interface LayoutPlan {
  /** Segments to be split at a station, with the key of the node that is made there. */
  readonly cuts: readonly { readonly segment: string; readonly atMm: number; readonly key: string }[];
  readonly nodes: readonly { readonly key: string; readonly position: Point }[];
  readonly runs: readonly { readonly from: string; readonly to: string }[];
  readonly seats: readonly { readonly terminal: Terminal; readonly node: string }[];
}

const MARGIN_MM = 120;

/**
 * A first layout of all that wires end at and that has no place on the formboard yet, made from the wires and the diagram.
 * What is laid out stays. A harness is laid out as a tree; where the formboard has a closed loop, that is said.
 */
export function firstLayout(project: Project): Result<LayoutPlan, string> {
  const loop = closedLoop(project);
  if (loop) return problem(`The formboard has a closed loop at ${loop}. A first layout is made for trees: open the loop, or lay out the rest by hand.`); // prettier-ignore
  const lengths = new Map(
    deriveHarness(project).wires.map(({ wire, length: l }) => [
      wire.id,
      l.allowancesMm[0] + l.allowancesMm[1] + l.extraMm,
    ]),
  );
  const { terminals, ties } = terminalsOf(project, (wire) => lengths.get(wire) ?? 0);
  if (terminals.length === 0) return problem('There are no wires yet; a layout is made from what they join.');
  const board = boardOf(project);
  const plan: Plan = { cuts: [], nodes: [], runs: [], seats: [] };
  const sets = wiredSets(terminals, ties);
  for (const set of sets)
    if (set.some((t) => t.node !== undefined)) {
      const reason = complete(board, set, ties, plan);
      if (reason !== null) return problem(reason);
    }
  let bottom = boxOfBoard(board)?.maxY;
  const bare = sets.filter((set) => set.every((t) => t.node === undefined));
  for (const set of bundledSets(bare)) bottom = addComb(board, set, ties, plan, bottom);
  const cutKeys = new Set(plan.cuts.map((c) => c.key));
  return plan.seats.length === 0 && plan.runs.length === 0
    ? problem('All that wires end at is on the formboard, and joined by segments.')
    : ok({ ...plan, nodes: plan.nodes.filter((n) => !cutKeys.has(n.key)) });
}

/** Designator of a segment that closes a loop, if any does. */
function closedLoop(project: Project): string | undefined {
  const joined = new Map<string, string>();
  const root = (n: string): string => {
    let at = n;
    for (let up = joined.get(at); up !== undefined; up = joined.get(at)) at = up;
    return at;
  };
  for (const s of project.segments) {
    const [a, b] = [root(s.from), root(s.to)];
    if (a === b) return s.designator;
    joined.set(b, a);
  }
  return undefined;
}

interface Plan {
  readonly cuts: LayoutPlan['cuts'][number][];
  readonly nodes: LayoutPlan['nodes'][number][];
  readonly runs: LayoutPlan['runs'][number][];
  readonly seats: LayoutPlan['seats'][number][];
}

/** Lays a set of its own below all that is there. Gives the new lower edge. */
function addComb(
  board: LayoutBoard,
  set: readonly Terminal[],
  ties: readonly Tie[],
  plan: Plan,
  bottom: number | undefined,
): number {
  const keys = new Set(set.map((t) => t.key));
  const { nodes, runs } = combLayout(set, ties.filter((t) => keys.has(t.a))); // prettier-ignore
  const name = (key: string): string => `${set[0]!.key} ${key}`;
  const top = Math.min(...nodes.map((n) => n.position.y));
  const left = Math.min(...nodes.map((n) => n.position.x));
  const shift = { x: -left, y: bottom === undefined ? -top : bottom + MARGIN_MM - top };
  for (const n of nodes) {
    const position = { x: n.position.x + shift.x, y: n.position.y + shift.y };
    board.nodes.set(name(n.key), position);
    plan.nodes.push({ key: name(n.key), position });
    for (const terminal of n.terminals) plan.seats.push({ terminal, node: name(n.key) });
  }
  for (const r of runs) {
    addRun(board, name(r.from), name(r.to));
    plan.runs.push({ from: name(r.from), to: name(r.to) });
  }
  return boxOfBoard(board)!.maxY;
}

/** A segment is cut by the command; a run that is only planned becomes two. */
function recordCut(cut: Cut, plan: Plan): void {
  const { segment, from, to, key, atMm } = cut;
  if (segment !== undefined) {
    plan.cuts.push({ segment, key, atMm });
    return;
  }
  const at = plan.runs.findIndex((r) => r.from === from && r.to === to);
  plan.runs.splice(at, 1, { from, to: key }, { from: key, to });
}

/** Joins what is laid out of a set, and hangs the rest on it, those with most wires first. */
function complete(
  board: LayoutBoard,
  set: readonly Terminal[],
  ties: readonly Tie[],
  plan: Plan,
): string | null {
  const nodeOf = new Map(set.flatMap((t) => (t.node === undefined ? [] : [[t.key, t.node]])));
  const joints = joinPieces(board, [...nodeOf.values()]);
  if (!joints)
    return 'The laid out parts of the harness cannot be joined without a crossing; join them by hand first.';
  for (const [from, to] of joints) plan.runs.push({ from, to });
  const byKey = new Map(set.map((t) => [t.key, t]));
  const partnersOf = (t: Terminal) =>
    ties.flatMap((tie) => {
      const other = tie.a === t.key ? tie.b : tie.b === t.key ? tie.a : undefined;
      const node = other === undefined ? undefined : nodeOf.get(other);
      return node === undefined ? [] : [{ terminal: byKey.get(other!)!, node, tie }];
    });
  const wires = (t: Terminal): number => partnersOf(t).reduce((sum, p) => sum + p.tie.wires, 0);
  let left = set.filter((t) => !nodeOf.has(t.key));
  while (left.length > 0) {
    const next = left.reduce((best, t) => (wires(t) > wires(best) ? t : best));
    const before = new Set(board.nodes.keys());
    const cuts: Cut[] = [];
    const seat = attach(board, next, partnersOf(next), cuts);
    if (!seat) return 'There is no room for a branch without a crossing; move what is laid out apart first.';
    for (const [key, position] of board.nodes) if (!before.has(key)) plan.nodes.push({ key, position });
    for (const cut of cuts) recordCut(cut, plan);
    if (seat.isNew) plan.runs.push({ from: board.runs.at(-1)!.from, to: seat.node });
    plan.seats.push({ terminal: next, node: seat.node });
    nodeOf.set(next.key, seat.node);
    left = left.filter((t) => t !== next);
  }
  return null;
}
