import { byId } from '../../base/by-id';
import { distance, type Point } from '../../base/point';
import { ok, problem, type Result } from '../../base/result';
import type { Project } from '../../model/project';
import { createRouter } from '../route';
import { moved, turning, type Relaid } from './relaid';
import { nodesOnPath } from './wire-path';

type Board = Pick<Project, 'nodes' | 'segments' | 'connectors'>;

/**
 * The run between two nodes laid on a line: the first stays, the others follow at the lengths that routes count, in the
 * direction of the last (or the given one). What hangs on the run goes along and turns with it, in one piece.
 */
export function straightenedTrunk(
  project: Board,
  from: string,
  to: string,
  angleDeg?: number,
): Result<Relaid, string> {
  const nodes = byId(project.nodes);
  const segments = byId(project.segments);
  const [first, last] = [nodes.get(from), nodes.get(to)];
  if (!first || !last) return problem(`There is no node with id ${first ? to : from}.`);
  if (from === to) return problem('A trunk runs from one node to another.');
  const router = createRouter(project.nodes, project.segments);
  const way = router.between(from, to);
  if (!way.found) return problem(`No segments join ${first.designator} and ${last.designator}.`);
  const path = nodesOnPath(way.segments, from, segments) ?? [];
  const onPath = new Set(way.segments);

  const hanging = hangingOn(project, path, onPath);
  if (!hanging.ok) return hanging;
  const deg = angleDeg ?? directionDeg(first.position, last.position);
  const unit = { x: Math.cos((deg * Math.PI) / 180), y: Math.sin((deg * Math.PI) / 180) };
  const out = {
    nodes: new Map<string, Point>(),
    vias: new Map<string, readonly Point[]>(),
    angles: new Map<string, number>(),
  };
  let along = 0;
  for (const [i, id] of path.entries()) {
    const here = nodes.get(id)!.position;
    const next = nodes.get(path[i + 1] ?? id)!.position;
    const before = nodes.get(path[i - 1] ?? id)!.position;
    const place = { x: first.position.x + unit.x * along, y: first.position.y + unit.y * along };
    const was = distance(before, next) < 1e-9 ? deg : directionDeg(before, next);
    const motion = turning(here, deg - was, { x: place.x - here.x, y: place.y - here.y });
    const part = hanging.value.get(id)!;
    const inside = project.segments.filter((s) => !onPath.has(s.id) && (part.has(s.from) || part.has(s.to)));
    const piece = moved(project, part, new Set(inside.map((s) => s.id)), motion);
    for (const key of ['nodes', 'vias', 'angles'] as const)
      for (const [k, v] of piece[key]) (out[key] as Map<string, typeof v>).set(k, v);
    const leaving = segments.get(way.segments[i] ?? '');
    if (leaving) {
      along += router.lengthMmOf(leaving);
      if (leaving.via) out.vias.set(leaving.id, []);
    }
  }
  return ok(out);
}

const directionDeg = (a: Point, b: Point): number => (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;

/** For each node of the path, itself with all that hangs on it off the path. */
function hangingOn(
  project: Board,
  path: readonly string[],
  onPath: ReadonlySet<string>,
): Result<ReadonlyMap<string, ReadonlySet<string>>, string> {
  const owner = new Map(path.map((id) => [id, id]));
  const parts = new Map(path.map((id) => [id, new Set([id])]));
  const off = project.segments.filter((s) => !onPath.has(s.id));
  for (let grown = true; grown;) {
    grown = false;
    for (const s of off) {
      const [a, b] = [owner.get(s.from), owner.get(s.to)];
      if (a !== undefined && b !== undefined && a !== b)
        return problem(`${s.designator} closes a loop with the run, so that it cannot be laid straight.`);
      if ((a === undefined) === (b === undefined)) continue;
      const [root, node] = a === undefined ? [b!, s.from] : [a, s.to];
      owner.set(node, root);
      parts.get(root)!.add(node);
      grown = true;
    }
  }
  return ok(parts);
}
