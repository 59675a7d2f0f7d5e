import { lengthText, MM_PER_INCH, roundTo } from '@latchwork/core/model/length-text';
import type { Segment } from '@latchwork/core/model/topology';
import { clamp, mono, rimmed, text, type Pen } from '../../draw/pen';
import type { BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';
import { placeOfStation } from '@latchwork/core/derive/formboard/segment-path';
import { around, upright } from './along';

export type LengthUnit = 'mm' | 'in';

/** Drawn and typed lengths that differ by less are the same, mm. */
const SAME_MM = 0.05;

/**
 * What is written along a segment: a drawn length in brackets, a typed one as it is; where the two differ the typed one is
 * underlined (not to scale, ISO 129-1, from memory) and both stand there with their difference.
 */
export function lengthWords(
  { segment, lengthMm, drawnMm }: Pick<BoardSegment, 'segment' | 'lengthMm' | 'drawnMm'>,
  unit: LengthUnit,
): { readonly first: string; readonly more: string; readonly notToScale: boolean } {
  const typed = segment.lengthMm !== undefined;
  const tolerance = toleranceWords(segment, unit);
  const value = `${lengthText(lengthMm, unit)}${tolerance ? ` ${tolerance}` : ''}`;
  const off = lengthMm - drawnMm;
  const differs = typed && Math.abs(off) >= SAME_MM;
  return {
    first: typed ? value : `(${value})`,
    more: differs ? `drawn ${plain(drawnMm, unit)}, ${off > 0 ? '+' : '−'}${plain(Math.abs(off), unit)}` : '',
    notToScale: differs,
  };
}

const plain = (mm: number, unit: LengthUnit): string =>
  String(unit === 'mm' ? roundTo(mm, 1) : roundTo(mm / MM_PER_INCH, 2));

export function toleranceWords(
  { plusMm, minusMm }: Pick<Segment, 'plusMm' | 'minusMm'>,
  unit: LengthUnit,
): string {
  if (plusMm === undefined && minusMm === undefined) return '';
  if (plusMm === minusMm) return `±${plain(plusMm ?? 0, unit)}`;
  return `+${plusMm === undefined ? '?' : plain(plusMm, unit)}/−${minusMm === undefined ? '?' : plain(minusMm, unit)}`;
}

/** Lengths appear where they have room; designators of segments from this zoom on. */
const NAMES_PX_PER_MM = 0.9;

/** A length that follows a drag is also shown where it is longer than its run, but not than a stub of it, px. */
const LIVE_PX = 30;

/** `live` sets a length off while it follows a drag. */
export function paintLength(pen: Pen, item: BoardSegment, unit: LengthUnit, live = false): void {
  const { ctx, s, look } = pen;
  const { first, more, notToScale } = lengthWords(item, unit);
  const typed = item.segment.lengthMm !== undefined;
  const size = clamp(3 * s, 9, 13);
  const bold = text(look, size, typed || live ? 600 : 400);
  ctx.font = bold;
  const room = item.drawnMm * s;
  const width = ctx.measureText(first).width;
  if (room < (live ? LIVE_PX : width + 14)) return;
  const { at, angle } = placeOfStation(item.path, item.lengthMm, item.lengthMm / 2);
  const lift =
    Math.max(1.4, item.outsideMm * s) / 2 + 6 + (isCrowded(item, width / s) ? clamp(3 * s, 5, 11) : 0);
  around(pen, at, upright(angle), () => {
    ctx.textAlign = 'left';
    ctx.textBaseline = 'alphabetic';
    ctx.font = text(look, size);
    const tail = more && (live || room > width + 14 + ctx.measureText(`  ${more}`).width) ? `  ${more}` : '';
    const tailWidth = tail ? ctx.measureText(tail).width : 0;
    ctx.font = mono(look, size * 0.88);
    const name = s >= NAMES_PX_PER_MM ? `${item.segment.designator}  ` : '';
    const nameWidth = ctx.measureText(name).width;
    const named = room > width + tailWidth + nameWidth + 14;
    const lock = item.segment.lengthLocked ? size * 0.9 : 0;
    let x = -(width + tailWidth + lock + (named ? nameWidth : 0)) / 2;
    if (named) {
      ctx.fillStyle = look.tokens['ink-2'];
      rimmed(pen, name, x, -lift);
      x += nameWidth;
    }
    if (lock) {
      padlock(pen, x, -lift, size);
      x += lock;
    }
    ctx.font = bold;
    ctx.fillStyle = live ? look.tokens.copper : typed ? look.tokens.ink : look.tokens['ink-2'];
    rimmed(pen, first, x, -lift);
    if (notToScale) ctx.fillRect(x, -lift + 2, width, 1);
    if (!tail) return;
    ctx.font = text(look, size);
    ctx.fillStyle = look.tokens['ink-2'];
    rimmed(pen, tail, x + width, -lift);
  });
}

/** Whether a tie stands out of the run where its length is written. */
const isCrowded = (item: BoardSegment, widthMm: number): boolean =>
  (item.use?.ties ?? []).some((t) => Math.abs(t.atMm - item.lengthMm / 2) < widthMm / 2 + 4);

/** A locked length carries a small lock. */
function padlock({ ctx, look }: Pen, x: number, y: number, size: number): void {
  const w = size * 0.55;
  ctx.fillStyle = look.tokens.ink;
  ctx.strokeStyle = look.tokens.ink;
  ctx.lineWidth = 1.2;
  ctx.fillRect(x, y - size * 0.42, w, size * 0.42);
  ctx.beginPath();
  ctx.arc(x + w / 2, y - size * 0.42, w * 0.32, Math.PI, 0);
  ctx.stroke();
}
