import type { Harness } from '../../derive/harness';
import { roundTo } from '../../model/length-text';
import { framedBoard } from './board-figures';

/** What the board holds, and what it does not. */
export function boardSummary(harness: Harness): [string, string][] {
  const { scene, drawing } = framedBoard(harness);
  const { project } = harness;
  const placed = new Set(scene.nodes.map((n) => n.id));
  const unplaced = project.connectors.filter(
    (c) => c.supply === 'harness' && (c.node === undefined || !placed.has(c.node)),
  );
  const total = scene.segments.reduce((sum, s) => sum + s.lengthMm, 0);
  return [
    ['Board', `${Math.ceil(drawing.widthMm)} x ${Math.ceil(drawing.heightMm)} mm, with all names and tables`],
    [
      'On it',
      `${scene.segments.length} segments of ${roundTo(total, 1)} mm together, ${scene.nodes.length} nodes, ${scene.connectors.length} connectors`,
    ],
    ...(unplaced.length > 0
      ? [['Not on the board', unplaced.map((c) => c.designator).join(', ')] as [string, string]]
      : []),
  ];
}
