import type { Draft } from 'immer';
import { add, type Point } from '../../base/point';
import type { Project } from '../../model/project';
import { draftObject, objectIn } from './draft-object';

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

/** Writes new positions. Equipment takes its connectors along, unless they are moved themselves. */
export function moveObjects(
  draft: Draft<Project>,
  project: Project,
  moves: readonly { id: string; to: Point }[],
): void {
  const all = new Map(moves.map((m) => [m.id, m.to]));
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
