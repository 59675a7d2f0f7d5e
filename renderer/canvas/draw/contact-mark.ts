import type { ContactMark } from '@latchwork/core/derive/contact-mark';
import type { Pen } from './pen';

/** Draws the mark around a point; `r` is the half of the cavity, px. */
export function paintContactMark(
  { ctx, look }: Pen,
  mark: ContactMark,
  x: number,
  y: number,
  r: number,
): void {
  ctx.fillStyle = look.tokens.ink;
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = Math.max(1.2, r * 0.16);
  ctx.beginPath();
  switch (mark) {
    case 'pin':
      ctx.arc(x, y, r * 0.42, 0, 7);
      ctx.fill();
      return;
    case 'socket':
      ctx.arc(x, y, r * 0.5, 0, 7);
      ctx.lineWidth = Math.max(1.5, r * 0.24);
      break;
    case 'plugged':
      ctx.moveTo(x - r * 0.5, y - r * 0.5);
      ctx.lineTo(x + r * 0.5, y + r * 0.5);
      ctx.moveTo(x + r * 0.5, y - r * 0.5);
      ctx.lineTo(x - r * 0.5, y + r * 0.5);
      break;
    case 'blocked':
      ctx.fillRect(x - r * 0.72, y - r * 0.72, r * 1.44, r * 1.44);
      return;
    case 'empty':
      ctx.moveTo(x - r * 0.35, y);
      ctx.lineTo(x + r * 0.35, y);
      break;
    case 'unloaded':
      ctx.rect(x - r * 0.34, y - r * 0.34, r * 0.68, r * 0.68);
      ctx.lineWidth = 1;
      ctx.strokeStyle = look.tokens.edge;
      break;
  }
  ctx.stroke();
}
