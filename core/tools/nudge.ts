import type { Call } from '../commands/dispatch';
import type { Project } from '../model/project';
import { placeOf } from './move';
import { GRID_MM } from './snap';

export const DIRECTIONS = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] } as const;
export type Direction = keyof typeof DIRECTIONS;

/** Moves the selected objects by one grid step, or by 1 mm when fine; null when nothing selected can move. */
export function nudge(
  project: Project,
  selection: ReadonlySet<string>,
  direction: Direction,
  fine: boolean,
): Call<'objects.move'> | null {
  const [dx, dy] = DIRECTIONS[direction];
  const stepMm = fine ? 1 : GRID_MM;
  const moves = [...selection].flatMap((id) => {
    const at = placeOf(project, id);
    return at ? [{ id, to: { x: at.x + dx * stepMm, y: at.y + dy * stepMm } }] : [];
  });
  return moves.length ? { id: 'objects.move', args: { moves } } : null;
}
