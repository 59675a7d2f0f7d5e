import type { Box } from '@latchwork/core/base/point';
import type { Camera } from '../../app/view';
import { viewBox, type SizePx } from '../camera';
import type { Look } from './look';

/** How much of an object is drawn: a named box, rows of cavities, or the drawn face. */
export type Detail = 'far' | 'middle' | 'near';

export const MIDDLE_PX_PER_MM = 1.2;
export const NEAR_PX_PER_MM = 4.4;

export const detailAt = (pxPerMm: number): Detail =>
  pxPerMm < MIDDLE_PX_PER_MM ? 'far' : pxPerMm < NEAR_PX_PER_MM ? 'middle' : 'near';

/** A canvas with the camera it is drawn through. Coordinates given to `x` and `y` are sheet millimetres. */
export interface Pen {
  readonly ctx: CanvasRenderingContext2D;
  /** Pixels per millimetre. */
  readonly s: number;
  /** Left and top edge of the canvas on the sheet, mm. */
  readonly ox: number;
  readonly oy: number;
  readonly detail: Detail;
  readonly look: Look;
  /** The part of the sheet on this canvas. */
  readonly view: Box;
  readonly size: SizePx;
  /** A hasty picture while the camera moves: wires as hairlines. */
  readonly hasty: boolean;
  /** Whole pixels, so that straight lines stay sharp. */
  x(mm: number): number;
  y(mm: number): number;
}

export function penFor(
  ctx: CanvasRenderingContext2D,
  camera: Camera,
  size: SizePx,
  look: Look,
  hasty = false,
): Pen {
  const { x: ox, y: oy, pxPerMm: s } = camera;
  return {
    ctx,
    s,
    ox,
    oy,
    detail: detailAt(s),
    look,
    view: viewBox(camera, size),
    size,
    hasty,
    x: (mm) => Math.round((mm - ox) * s),
    y: (mm) => Math.round((mm - oy) * s),
  };
}

/** Runs with the canvas in sheet millimetres: for curves, whose line widths are then millimetres too. */
export function inMillimetres(pen: Pen, draw: (ctx: CanvasRenderingContext2D) => void): void {
  const { ctx, s, ox, oy } = pen;
  ctx.save();
  ctx.scale(s, s);
  ctx.translate(-ox, -oy);
  draw(ctx);
  ctx.restore();
}

export const clamp = (v: number, low: number, high: number): number => Math.min(high, Math.max(low, v));

/** A straight line of one pixel that falls on one row or column of pixels. */
export function hairline(
  ctx: CanvasRenderingContext2D,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): void {
  ctx.moveTo(x0 + 0.5, y0 + 0.5);
  ctx.lineTo(x1 + 0.5, y1 + 0.5);
}

export const mono = (look: Look, px: number, weight = 400): string =>
  `${weight} ${px.toFixed(1)}px ${look.tokens.monoFont}`;
export const text = (look: Look, px: number, weight = 400): string =>
  `${weight} ${px.toFixed(1)}px ${look.tokens.textFont}`;

/** The text, shortened with an ellipsis to a width in the font now set; empty when not even that has room. */
export function shortened(ctx: CanvasRenderingContext2D, words: string, widthPx: number): string {
  if (ctx.measureText(words).width <= widthPx) return words;
  for (let n = words.length - 1; n > 0; n--) {
    const cut = `${words.slice(0, n)}…`;
    if (ctx.measureText(cut).width <= widthPx) return cut;
  }
  return '';
}

/** Text with a rim of paper, so that it can be read where wires run under it. */
export function rimmed({ ctx, look, hasty }: Pen, words: string, x: number, y: number): void {
  if (!hasty) {
    ctx.lineJoin = 'round';
    ctx.lineWidth = 3;
    ctx.strokeStyle = look.tokens.paper;
    ctx.strokeText(words, x, y);
  }
  ctx.fillText(words, x, y);
}
