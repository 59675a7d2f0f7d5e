import { boxesMeet } from '@latchwork/core/base/point';
import type { Equipment } from '@latchwork/core/model/equipment';
import type { AreaItem } from '../scene/items';
import { clamp, mono, shortened, text, type Pen } from './pen';

/** Boards, panels and devices: quiet outlines that hold their connectors. */
export function paintAreas(pen: Pen, areas: readonly AreaItem[], skip: ReadonlySet<string>): void {
  for (const area of areas) if (!skip.has(area.id) && boxesMeet(area, pen.view)) paintArea(pen, area);
}

export function paintArea(pen: Pen, area: AreaItem, dx = 0, dy = 0): void {
  const { ctx, s, look } = pen;
  const [x0, y0] = [pen.x(area.minX + dx), pen.y(area.minY + dy)];
  const [x1, y1] = [pen.x(area.maxX + dx), pen.y(area.maxY + dy)];
  const { kind } = area.equipment;
  ctx.fillStyle = look.tokens.sheet;
  ctx.globalAlpha = 0.55;
  ctx.fillRect(x0, y0, x1 - x0, y1 - y0);
  ctx.globalAlpha = 1;
  ctx.strokeStyle = look.tokens['ink-2'];
  ctx.lineWidth = 1;
  if (kind === 'device') ctx.setLineDash([10, 3, 2, 3]);
  ctx.strokeRect(x0 + 0.5, y0 + 0.5, x1 - x0, y1 - y0);
  ctx.setLineDash([]);
  const inset = Math.round(clamp(1.4 * s, 2, 7));
  if (kind === 'panel')
    ctx.strokeRect(x0 + inset + 0.5, y0 + inset + 0.5, x1 - x0 - 2 * inset, y1 - y0 - 2 * inset);
  if (kind === 'board' && pen.detail !== 'far') boardHoles(pen, x0, y0, x1, y1);
  title(pen, area.equipment, x0, y0, x1, inset);
}

/** The four fixing holes by which a board is known. */
function boardHoles(pen: Pen, x0: number, y0: number, x1: number, y1: number): void {
  const { ctx, s, look } = pen;
  const r = clamp(1.1 * s, 1.5, 7);
  const d = 3.2 * s;
  ctx.strokeStyle = look.tokens.edge;
  ctx.beginPath();
  for (const [x, y] of [
    [x0 + d, y1 - d],
    [x1 - d, y1 - d],
    [x1 - d, y0 + d],
  ] as const) {
    ctx.moveTo(x + r, y);
    ctx.arc(x, y, r, 0, 7);
  }
  ctx.stroke();
}

function title(pen: Pen, e: Equipment, x0: number, y0: number, x1: number, inset: number): void {
  const { ctx, s, look } = pen;
  const size = clamp(3.4 * s, 10, 16);
  const [x, y] = [x0 + inset + clamp(1.4 * s, 3, 8), y0 + inset + size * 0.9];
  const room = x1 - x - 6;
  ctx.textAlign = 'left';
  ctx.textBaseline = 'alphabetic';
  ctx.font = mono(look, size, 600);
  ctx.fillStyle = look.tokens.ink;
  const name = shortened(ctx, e.designator, room);
  ctx.fillText(name, x, y);
  if (pen.detail === 'far') return;
  const after = x + ctx.measureText(name).width + 7;
  ctx.font = text(look, clamp(2.7 * s, 9, 13));
  ctx.fillStyle = look.tokens['ink-2'];
  ctx.fillText(
    shortened(
      ctx,
      [...(e.description ? [e.description] : []), KIND[e.kind](e)].join(' · '),
      x1 - 4 - after - 4 * s,
    ),
    after,
    y,
  );
}

const thick = (mm: number | undefined): string => (mm === undefined ? '' : ` ${mm} mm`);
const KIND: Readonly<Record<Equipment['kind'], (e: Equipment) => string>> = {
  board: (e) => `board${e.kind === 'board' ? thick(e.thicknessMm) : ''}`,
  panel: (e) => `panel${e.kind === 'panel' ? thick(e.thicknessMm) : ''}`,
  device: () => 'device',
};
