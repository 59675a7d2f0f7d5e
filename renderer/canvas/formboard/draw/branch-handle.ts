import type { Point } from '@latchwork/core/base/point';
import { placeOfStation } from '@latchwork/core/derive/formboard/segment-path';
import { branchOf } from '@latchwork/core/tools/formboard/branch-of';
import type { Pen } from '../../draw/pen';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';

/** How far beside the run the handle stands, px. */
const AWAY_PX = 30;

/** Where the handle of a segment's branch stands, mm: beside its far part; none for a run in a loop. */
export function handlePoint(scene: BoardScene, segment: string, pxPerMm: number): Point | null {
  const s = scene.segmentById.get(segment);
  const branch = s && branchOf(scene.harness.project, segment);
  if (!s || !branch) return null;
  const far = s.segment.from === branch.node ? 0.8 : 0.2;
  const { at, angle } = placeOfStation(s.path, s.lengthMm, s.lengthMm * far);
  const away = AWAY_PX / pxPerMm + s.outsideMm / 2;
  return { x: at.x - Math.sin(angle) * away, y: at.y + Math.cos(angle) * away };
}

/** A ring with a bent arrow, by which everything beyond a node is turned. */
export function paintBranchHandle(pen: Pen, at: Point): void {
  const { ctx, look } = pen;
  const [x, y] = [(at.x - pen.ox) * pen.s, (at.y - pen.oy) * pen.s];
  ctx.beginPath();
  ctx.arc(x, y, 9, 0, 7);
  ctx.fillStyle = look.tokens.paper;
  ctx.fill();
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 1.4;
  ctx.stroke();
  ctx.beginPath();
  ctx.arc(x, y, 4.5, -2.4, 1.6);
  ctx.lineWidth = 1.5;
  ctx.stroke();
  const [ax, ay] = [x + 4.5 * Math.cos(1.6), y + 4.5 * Math.sin(1.6)];
  ctx.beginPath();
  ctx.moveTo(ax - 3.4, ay + 0.4);
  ctx.lineTo(ax + 1.2, ay - 3);
  ctx.lineTo(ax + 1.4, ay + 2.6);
  ctx.fillStyle = look.tokens.copper;
  ctx.fill();
}
