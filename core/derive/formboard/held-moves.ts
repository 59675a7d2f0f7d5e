import { byId } from '../../base/by-id';
import { add, distance, type Point } from '../../base/point';
import { ok, problem, type Result } from '../../base/result';
import { drawnPath } from '../../calc/curve/drawn-path';
import type { Project } from '../../model/project';
import type { Node, Segment } from '../../model/topology';
import { nearestOfCircles, type Circle } from './nearest-of-circles';

/** Where nodes and via points come to lie after a move. */
export interface HeldMoves {
  readonly nodes: ReadonlyMap<string, Point>;
  /** Segments that are carried along as a whole. */
  readonly vias: ReadonlyMap<string, readonly Point[]>;
}

type Board = Pick<Project, 'nodes' | 'segments'>;
type Moves = readonly { readonly id: string; readonly to: Point }[];

const HAIR_MM = 1e-6;

/**
 * The places of moved nodes that keep the drawn length of every locked segment, as near as possible to where they were to
 * go; or what holds them, in words. Nodes that move alike and are joined by locked segments stay together. One locked
 * segment to a node that stays lets them slide around it, two hold them but for the mirrored place.
 */
export function heldMoves(project: Board, moves: Moves): Result<HeldMoves, string> {
  const nodes = byId(project.nodes);
  const shifts = new Map<string, Point>();
  for (const { id, to } of moves) {
    const node = nodes.get(id);
    if (node) shifts.set(id, { x: to.x - node.position.x, y: to.y - node.position.y });
  }
  const locked = project.segments.filter(
    (s) => s.lengthLocked && s.from !== s.to && (shifts.has(s.from) || shifts.has(s.to)),
  );
  for (const body of bodiesOf(shifts, locked)) {
    const held = shiftOfBody(body, shifts, locked, nodes);
    if (!held.ok) return held;
    for (const id of body) shifts.set(id, held.value);
  }
  const placed = new Map<string, Point>();
  for (const [id, by] of shifts) {
    const node = nodes.get(id);
    if (node) placed.set(id, add(node.position, by));
  }
  const out = { nodes: placed, vias: carriedVias(project.segments, shifts) };
  const torn = locked.find((s) => Math.abs(lengthAfter(s, out, nodes) - lengthNow(s, nodes)) > HAIR_MM);
  return torn
    ? problem(`The length of ${torn.designator} is locked; its ends cannot move like this.`)
    : ok(out);
}

/** Moved nodes in sets that move alike and hang together by locked segments. */
function bodiesOf(
  shifts: ReadonlyMap<string, Point>,
  locked: readonly Segment[],
): readonly (readonly string[])[] {
  const body = new Map([...shifts.keys()].map((id) => [id, [id]]));
  for (const s of locked) {
    const [a, b] = [body.get(s.from), body.get(s.to)];
    if (!a || !b || a === b || !alike(shifts.get(s.from), shifts.get(s.to))) continue;
    a.push(...b);
    for (const id of b) body.set(id, a);
  }
  return [...new Set(body.values())];
}

const alike = (a: Point | undefined, b: Point | undefined): boolean =>
  a !== undefined && b !== undefined && distance(a, b) < 1e-9;

function shiftOfBody(
  body: readonly string[],
  shifts: ReadonlyMap<string, Point>,
  locked: readonly Segment[],
  nodes: ReadonlyMap<string, Node>,
): Result<Point, string> {
  const wanted = shifts.get(body[0] ?? '') ?? { x: 0, y: 0 };
  const inside = new Set(body);
  const holding = locked.filter(
    (s) => inside.has(s.from) !== inside.has(s.to) && !(shifts.has(s.from) && shifts.has(s.to)),
  );
  const [only, ...more] = holding;
  if (!only) return ok(wanted);
  if (more.length === 0) return ok(slide(only, inside.has(only.from), wanted, nodes));
  const held = (): Result<Point, string> => {
    const names = holding.map((s) => s.designator);
    const what = body.map((id) => nodes.get(id)?.designator).join(', ');
    return problem(
      `${what} cannot move there: the lengths of ${names.slice(0, -1).join(', ')} and ${names.at(-1)} are locked.`,
    );
  };
  if (holding.some((s) => s.shape === 'curve' && s.via?.length)) return held();
  const circles = holding.map((s) => circleOf(s, inside.has(s.from), nodes));
  const found = nearestOfCircles(circles, wanted);
  const stays = Math.hypot(found.x, found.y) < HAIR_MM;
  return stays && Math.hypot(wanted.x, wanted.y) >= HAIR_MM ? held() : ok(found);
}

/** The end of a segment that moves, and the point before it that stays. */
function lastLeg(s: Segment, movesFrom: boolean, nodes: ReadonlyMap<string, Node>): readonly [Point, Point] {
  const [from, to] = [nodes.get(s.from)!.position, nodes.get(s.to)!.position];
  return movesFrom ? [from, s.via?.[0] ?? to] : [to, s.via?.at(-1) ?? from];
}

/** Shifts that keep the length of a straight run lie on a circle. */
function circleOf(s: Segment, movesFrom: boolean, nodes: ReadonlyMap<string, Node>): Circle {
  const [end, anchor] = lastLeg(s, movesFrom, nodes);
  return { centre: { x: anchor.x - end.x, y: anchor.y - end.y }, radius: distance(anchor, end) };
}

/** The shift nearest to the wanted one in direction that keeps the length of one segment. */
function slide(s: Segment, movesFrom: boolean, wanted: Point, nodes: ReadonlyMap<string, Node>): Point {
  if (s.shape !== 'curve' || !s.via?.length) return nearestOfCircles([circleOf(s, movesFrom, nodes)], wanted);
  const [end, anchor] = lastLeg(s, movesFrom, nodes);
  const target = add(end, wanted);
  const far = distance(anchor, target);
  const [x, y] =
    far < HAIR_MM ? [end.x - anchor.x, end.y - anchor.y] : [target.x - anchor.x, target.y - anchor.y];
  const size = Math.hypot(x, y) || 1;
  const at = (r: number): Point => ({ x: anchor.x + (x / size) * r, y: anchor.y + (y / size) * r });
  const goalMm = lengthNow(s, nodes);
  const lengthAt = (r: number): number => {
    const [from, to] = [nodes.get(s.from)!.position, nodes.get(s.to)!.position];
    const points = movesFrom ? [at(r), ...(s.via ?? []), to] : [from, ...(s.via ?? []), at(r)];
    return drawnPath(points as [Point, ...Point[]], 'curve').lengthMm;
  };
  let [low, high] = [0, goalMm];
  // A curve is never shorter than its last leg, so the goal lies between; where the rest alone is too long, it stays.
  if (lengthAt(low) > goalMm) return { x: 0, y: 0 };
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (lengthAt(middle) < goalMm) low = middle;
    else high = middle;
  }
  const found = at((low + high) / 2);
  return { x: found.x - end.x, y: found.y - end.y };
}

const pointsOf = (s: Segment, from: Point, to: Point, via: readonly Point[]): number =>
  drawnPath([from, ...via, to], s.shape ?? 'straight').lengthMm;

const lengthNow = (s: Segment, nodes: ReadonlyMap<string, Node>): number =>
  pointsOf(s, nodes.get(s.from)!.position, nodes.get(s.to)!.position, s.via ?? []);

function lengthAfter(s: Segment, after: HeldMoves, nodes: ReadonlyMap<string, Node>): number {
  const place = (id: string): Point => after.nodes.get(id) ?? nodes.get(id)!.position;
  return pointsOf(s, place(s.from), place(s.to), after.vias.get(s.id) ?? s.via ?? []);
}

/** Via points of segments both of whose ends move alike. */
function carriedVias(
  segments: readonly Segment[],
  shifts: ReadonlyMap<string, Point>,
): ReadonlyMap<string, readonly Point[]> {
  const out = new Map<string, readonly Point[]>();
  for (const s of segments) {
    const by = shifts.get(s.from);
    if (s.via?.length && by && alike(by, shifts.get(s.to)))
      out.set(
        s.id,
        s.via.map((p) => add(p, by)),
      );
  }
  return out;
}
