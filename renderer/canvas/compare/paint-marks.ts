import { boxesMeet } from '@latchwork/core/base/point';
import { mono, type Pen } from '../draw/pen';
import type { ChangeMark } from './change-marks';

/** Told apart by sign and dash, the colour comes on top. */
const DASH: Readonly<Record<ChangeMark['what'], readonly number[]>> = {
  added: [],
  changed: [8, 3, 2, 3],
  removed: [3, 4],
};
const PAD_PX = 4;
const TAG_PX = 16;

/** Changes against another state: a frame around the object with its sign and name; what was removed where it was. */
export function paintMarks(pen: Pen, marks: readonly ChangeMark[]): void {
  const { ctx, look } = pen;
  const { good, minor, critical, sheet } = look.tokens;
  const colours = { added: good, changed: minor, removed: critical };
  ctx.save();
  ctx.font = mono(look, 11, 700);
  ctx.textBaseline = 'middle';
  ctx.textAlign = 'left';
  for (const { what, text, box } of marks) {
    if (!boxesMeet(box, pen.view)) continue;
    const x = pen.x(box.minX) - PAD_PX;
    const y = pen.y(box.minY) - PAD_PX;
    const width = pen.x(box.maxX) - pen.x(box.minX) + 2 * PAD_PX;
    const height = pen.y(box.maxY) - pen.y(box.minY) + 2 * PAD_PX;
    ctx.strokeStyle = colours[what];
    ctx.lineWidth = 1.5;
    ctx.setLineDash([...DASH[what]]);
    ctx.strokeRect(x, y, width, height);
    ctx.setLineDash([]);
    const tag = ctx.measureText(text).width + 8;
    ctx.fillStyle = sheet;
    ctx.fillRect(x, y - TAG_PX, tag, TAG_PX);
    ctx.strokeRect(x, y - TAG_PX, tag, TAG_PX);
    ctx.fillStyle = colours[what];
    ctx.fillText(text, x + 4, y - TAG_PX / 2);
  }
  ctx.restore();
}
