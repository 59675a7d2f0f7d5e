import { GRID_MM } from '@latchwork/core/tools/snap';
import { clamp, type Pen } from './pen';

const BOLD_EVERY = 5;

/** Paper and its 5 mm grid, every fifth line a little stronger; it fades as one zooms away. */
export function paintGrid(pen: Pen): void {
  const { ctx, s, view, size, look } = pen;
  ctx.fillStyle = look.tokens.paper;
  ctx.fillRect(0, 0, size.width, size.height);
  const fine = clamp((GRID_MM * s - 7) / 16, 0, 1);
  const bold = clamp((GRID_MM * BOLD_EVERY * s - 12) / 40, 0, 1);
  if (bold === 0) return;
  ctx.fillStyle = look.tokens.line;
  for (const strong of [false, true]) {
    ctx.globalAlpha = strong ? bold * 0.55 : fine * 0.3;
    if (ctx.globalAlpha === 0) continue;
    for (let i = Math.ceil(view.minX / GRID_MM); i * GRID_MM <= view.maxX; i++)
      if ((i % BOLD_EVERY === 0) === strong) ctx.fillRect(pen.x(i * GRID_MM), 0, 1, size.height);
    for (let i = Math.ceil(view.minY / GRID_MM); i * GRID_MM <= view.maxY; i++)
      if ((i % BOLD_EVERY === 0) === strong) ctx.fillRect(0, pen.y(i * GRID_MM), size.width, 1);
  }
  ctx.globalAlpha = 1;
}
