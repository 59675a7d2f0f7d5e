import type { Draft } from 'immer';
import { add, type Point } from '../../base/point';
import { heldMoves } from '../../derive/formboard/held-moves';
import type { Project } from '../../model/project';
import { draftObject, objectIn } from './draft-object';
import { relay } from './relay';

const PLACED = ['connectors', 'equipment', 'splices', 'nodes'] as const;
type PlacedCollection = (typeof PLACED)[number];

/** The collection and position of an object that has a place on the sheet or the formboard. */
export function placed(
  project: Project,
  id: string,
): { collection: PlacedCollection; position: Point } | undefined {
  for (const collection of PLACED) {
    const object = objectIn(project, collection, id);
    if (object) return { collection, position: object.position };
  }
  return undefined;
}

type Moves = readonly { id: string; to: Point }[];

const nodeMoves = (project: Project, moves: Moves): Moves =>
  moves.filter((m) => objectIn(project, 'nodes', m.id) !== undefined);

/** What keeps nodes from going where they are to go: locked lengths, in words. Null where nothing does. */
export function whatHolds(project: Project, moves: Moves): string | null {
  const nodes = nodeMoves(project, moves);
  if (nodes.length === 0) return null;
  const held = heldMoves(project, nodes);
  return held.ok ? null : held.problem;
}

/**
 * Writes new positions. Equipment takes its connectors along, unless they are moved themselves; nodes keep the lengths of
 * locked segments, and take via points along.
 */
export function moveObjects(draft: Draft<Project>, project: Project, moves: Moves): void {
  const nodes = nodeMoves(project, moves);
  const held = nodes.length > 0 && heldMoves(project, nodes);
  if (held && held.ok) relay(draft, project, { ...held.value, angles: new Map() });
  const moved = new Set(nodes.map((m) => m.id));
  const all = new Map(moves.filter((m) => !moved.has(m.id)).map((m) => [m.id, m.to]));
  for (const { id, to } of moves) {
    const from = objectIn(project, 'equipment', id)?.position;
    if (!from) continue;
    const by = { x: to.x - from.x, y: to.y - from.y };
    for (const c of project.connectors)
      if (c.equipment === id && !all.has(c.id)) all.set(c.id, add(c.position, by));
  }
  for (const [id, to] of all) {
    const there = placed(project, id);
    if (!there || (there.position.x === to.x && there.position.y === to.y)) continue;
    draftObject(draft, project, there.collection, id).position = to;
  }
}
