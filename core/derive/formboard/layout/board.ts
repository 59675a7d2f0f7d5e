import { byId } from '../../../base/by-id';
import { boxAround, distance, type Box, type Point } from '../../../base/point';
import { pathPoints } from '../../../calc/curve/path-points';
import type { Project } from '../../../model/project';
import { segmentLengths, segmentPath } from '../segment-path';
import { betweenLines, fromLine } from './lines-meet';

/** A run as it lies on the board while a layout is made. */
export interface BoardRun {
  /** Id of the segment; undefined for a run that is to be made. */
  readonly segment: string | undefined;
  readonly from: string;
  readonly to: string;
  readonly points: readonly Point[];
  readonly lengthMm: number;
}

/** The formboard while a layout is made: what is there, and what is to be added. Nodes by id, or by key for new ones. */
export interface LayoutBoard {
  readonly nodes: Map<string, Point>;
  readonly runs: BoardRun[];
  /** Nodes of connectors, which should hang on one run only. */
  readonly ends: Set<string>;
}

export function boardOf(project: Pick<Project, 'nodes' | 'segments' | 'connectors'>): LayoutBoard {
  const nodes = byId(project.nodes);
  const runs = project.segments.flatMap((s): BoardRun[] => {
    const path = segmentPath(s, nodes);
    if (!path) return [];
    const { usedMm } = segmentLengths(s, nodes);
    return [{ segment: s.id, from: s.from, to: s.to, points: pathPoints(path, 0.2), lengthMm: usedMm }];
  });
  return {
    nodes: new Map(project.nodes.map((n) => [n.id, n.position])),
    runs,
    ends: new Set(project.connectors.flatMap((c) => c.node ?? [])),
  };
}

export const placeOn = (board: LayoutBoard, node: string): Point => board.nodes.get(node)!;

export function addRun(board: LayoutBoard, from: string, to: string): void {
  const points = [placeOn(board, from), placeOn(board, to)] as const;
  board.runs.push({ segment: undefined, from, to, points, lengthMm: distance(points[0], points[1]) });
}

/** Distances along the runs from a node to all that it is joined with, mm. */
export function distancesFrom(board: LayoutBoard, from: string): ReadonlyMap<string, number> {
  const at = new Map<string, BoardRun[]>();
  for (const r of board.runs)
    for (const n of [r.from, r.to]) {
      const list = at.get(n);
      if (list) list.push(r);
      else at.set(n, [r]);
    }
  const out = new Map([[from, 0]]);
  const open = [from];
  for (let here = open.pop(); here !== undefined; here = open.pop())
    for (const r of at.get(here) ?? []) {
      const next = r.from === here ? r.to : r.from;
      if (out.has(next)) continue;
      out.set(next, out.get(here)! + r.lengthMm);
      open.push(next);
    }
  return out;
}

export function boxOfBoard(board: LayoutBoard): Box | null {
  const points = [...board.nodes.values(), ...board.runs.flatMap((r) => r.points)];
  return boxAround(points.map(({ x, y }) => ({ minX: x, minY: y, maxX: x, maxY: y })));
}

/** Room around the end of a new run, or the node that it leads to. */
export type RunEnd = { readonly at: Point; readonly roomMm: number } | { readonly node: string };

/**
 * Whether a straight run from a node keeps clear of all others: it crosses and touches none, leaves those at its own nodes
 * by a fair angle, and a new end has its room.
 */
export function isFree(board: LayoutBoard, root: string, end: RunEnd): boolean {
  const start = placeOn(board, root);
  const goal = 'node' in end ? placeOn(board, end.node) : end.at;
  const roomMm = 'node' in end ? 0 : end.roomMm;
  const own = new Map([[root, goal], ...('node' in end ? [[end.node, start] as const] : [])]);
  for (const r of board.runs) {
    const last = r.points.length - 1;
    for (let i = 1; i <= last; i++) {
      const [a, b] = [r.points[i - 1]!, r.points[i]!];
      const first = i === 1 && own.has(r.from) ? own.get(r.from) : undefined;
      const final = i === last && own.has(r.to) ? own.get(r.to) : undefined;
      if (first && !partWays(a, b, first)) return false;
      if (final && !partWays(b, a, final)) return false;
      if (!first && !final && betweenLines(start, goal, a, b) < 1) return false;
      if (!own.has(r.from) && !own.has(r.to) && fromLine(goal, a, b) < roomMm) return false;
    }
  }
  for (const [id, p] of board.nodes) {
    if (own.has(id)) continue;
    if (fromLine(p, start, goal) < 1 || distance(p, goal) < roomMm) return false;
  }
  return true;
}

const LEAST_ANGLE = (12 * Math.PI) / 180;

/** Whether lines from one point to two others part by a fair angle. */
function partWays(at: Point, p: Point, q: Point): boolean {
  const by = Math.atan2(p.y - at.y, p.x - at.x) - Math.atan2(q.y - at.y, q.x - at.x);
  return Math.abs(Math.atan2(Math.sin(by), Math.cos(by))) >= LEAST_ANGLE;
}
