import type { BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';
import type { Pen } from '../../draw/pen';
import { trace } from './along';
import { lanesShow, paintLanes } from './lanes';

/** Below this the two edges of a trunk would touch: it is one line, px. */
const TUBE_PX = 4;

/** How wide a bundle is on the screen: true to scale, never thinner than can be seen. */
export const trunkPx = (s: BoardSegment, pen: Pick<Pen, 's'>): number => Math.max(1.4, s.widthMm * pen.s);

/** A run of the harness: its bundle true to scale, empty runs as a dashed line. */
export function paintTrunk(pen: Pen, item: BoardSegment): void {
  const { ctx, look } = pen;
  const width = trunkPx(item, pen);
  ctx.lineCap = 'round';
  ctx.lineJoin = 'round';
  trace(pen, item.points);
  if (!item.use?.wires.length) {
    ctx.lineCap = 'butt';
    ctx.setLineDash([6, 4]);
    ctx.strokeStyle = look.tokens['ink-2'];
    ctx.lineWidth = 1.4;
    ctx.stroke();
    ctx.setLineDash([]);
    return;
  }
  // A width that is only assumed has a lighter edge.
  ctx.strokeStyle = item.widthKnown ? look.tokens.ink : look.tokens.edge;
  ctx.lineWidth = width;
  ctx.stroke();
  if (width >= TUBE_PX) {
    ctx.strokeStyle = look.tokens.sheet;
    ctx.lineWidth = width - 2.2;
    ctx.stroke();
    if (!pen.hasty && lanesShow(pen, item)) paintLanes(pen, item);
  }
  ctx.lineCap = 'butt';
}
