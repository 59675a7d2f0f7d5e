import type { Point } from '@latchwork/core/base/point';
import { boxOf } from '@latchwork/core/tools/box-select';
import type { Pen } from '../draw/pen';
import type { InteractionState } from '../interaction';
import { buildBoardScene, type BoardScene } from './board-scene';
import { paintBoard, type BoardLook } from './paint-board';

/** The gesture under way on the formboard. While nodes move, the whole board is drawn as it would become. */
export function paintBoardTop(
  pen: Pen,
  scene: BoardScene,
  look: BoardLook,
  { gesture }: InteractionState,
): void {
  if (!gesture) return;
  const { ctx } = pen;
  ctx.strokeStyle = pen.look.tokens.copper;
  if (gesture.is === 'move' && gesture.moving) {
    const shifts = new Map<string, Point>(gesture.objects.map((o) => [o.id, gesture.by]));
    paintBoard(pen, buildBoardScene(scene.harness, shifts), look);
  } else if (gesture.is === 'box-select') {
    const b = boxOf(gesture);
    ctx.lineWidth = 1;
    ctx.strokeRect(
      pen.x(b.minX) + 0.5,
      pen.y(b.minY) + 0.5,
      pen.x(b.maxX) - pen.x(b.minX),
      pen.y(b.maxY) - pen.y(b.minY),
    );
  } else if (gesture.is === 'draw-segment') {
    const from = scene.nodes.find((n) => n.node.id === gesture.from)?.at;
    const { over } = gesture;
    const to = (over.on === 'node' && scene.nodes.find((n) => n.node.id === over.id)?.at) || gesture.at;
    if (!from) return;
    ctx.lineWidth = 2;
    if (over.on !== 'node') ctx.setLineDash([6, 4]);
    ctx.beginPath();
    ctx.moveTo(pen.x(from.x), pen.y(from.y));
    ctx.lineTo(pen.x(to.x), pen.y(to.y));
    ctx.stroke();
    ctx.setLineDash([]);
  }
}
