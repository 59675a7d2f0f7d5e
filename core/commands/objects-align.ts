import { z } from 'zod';
import type { Box, Point } from '../base/point';
import { symbolBox } from '../derive/symbol';
import { Id } from '../model/ids';
import { isMatingHalf } from '../model/parts/part';
import type { Project } from '../model/project';
import { command } from './command';
import { objectIn } from './shared/draft-object';
import { moveObjects, placed, whatHolds } from './shared/placed';

const Edge = z.enum(['left', 'right', 'top', 'bottom', 'centre-x', 'centre-y']);
type Edge = z.infer<typeof Edge>;

/** Moves objects so that an edge, or the middle, of each lies on that of the first one. */
export const objectsAlign = command({
  id: 'objects.align',
  label: 'Align',
  args: z.strictObject({ ids: z.array(Id), edge: Edge }),
  refuse(project, { ids, edge }) {
    if (ids.filter((id) => placed(project, id)).length < 2)
      return 'Select two objects or more to align them.';
    return whatHolds(project, movesTo(project, ids, edge));
  },
  run(draft, { ids, edge }, _context, project) {
    moveObjects(draft, project, movesTo(project, ids, edge));
  },
});

function movesTo(project: Project, ids: readonly string[], edge: Edge): { id: string; to: Point }[] {
  const boxes = ids.flatMap((id) => {
    const box = boxOf(project, id);
    return box ? [{ id, box }] : [];
  });
  const first = boxes[0];
  if (!first) return [];
  return boxes.map(({ id, box }) => {
    const by = lineOf(first.box, edge) - lineOf(box, edge);
    const vertical = edge === 'top' || edge === 'bottom' || edge === 'centre-y';
    return { id, to: { x: box.minX + (vertical ? 0 : by), y: box.minY + (vertical ? by : 0) } };
  });
}

function boxOf(project: Project, id: string): Box | undefined {
  const connector = objectIn(project, 'connectors', id);
  if (connector) {
    const part = objectIn(project, 'parts', connector.part);
    return symbolBox(connector, isMatingHalf(part) ? part : undefined);
  }
  const there = placed(project, id);
  if (!there) return undefined;
  const area = objectIn(project, 'equipment', id);
  const { x, y } = there.position;
  return { minX: x, minY: y, maxX: x + (area?.widthMm ?? 0), maxY: y + (area?.heightMm ?? 0) };
}

function lineOf(box: Box, edge: Edge): number {
  switch (edge) {
    case 'left':
      return box.minX;
    case 'right':
      return box.maxX;
    case 'top':
      return box.minY;
    case 'bottom':
      return box.maxY;
    case 'centre-x':
      return (box.minX + box.maxX) / 2;
    case 'centre-y':
      return (box.minY + box.maxY) / 2;
  }
}
