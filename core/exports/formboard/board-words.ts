import { roundTo } from '../../model/length-text';
import type { BoardSegment } from '../../derive/formboard/scene/board-items';

/** Drawn and typed lengths that differ by less are the same, mm. */
const SAME_MM = 0.05;

const mm = (value: number): string => String(roundTo(value, 1));

/** "±2", "+5/-0"; what is not stated is a question mark, nothing where neither is. */
export function toleranceText({
  plusMm,
  minusMm,
}: {
  readonly plusMm?: number | undefined;
  readonly minusMm?: number | undefined;
}): string {
  if (plusMm === undefined && minusMm === undefined) return '';
  if (plusMm === minusMm) return `±${mm(plusMm ?? 0)}`;
  return `+${plusMm === undefined ? '?' : mm(plusMm)}/-${minusMm === undefined ? '?' : mm(minusMm)}`;
}

/** A length with its tolerance: "300 +5/-0". */
export const lengthWithTolerance = (
  lengthMm: number,
  tolerance: Parameters<typeof toleranceText>[0],
): string => [mm(lengthMm), toleranceText(tolerance)].filter(Boolean).join(' ');

export const diameterText = ({
  widthMm,
  widthKnown,
}: Pick<BoardSegment, 'widthMm' | 'widthKnown'>): string => (widthKnown ? `Ø${mm(widthMm)}` : 'Ø not known');

/** Whether a segment is not as long on the board as it is to be. */
export const isOffScale = ({ lengthMm, drawnMm }: Pick<BoardSegment, 'lengthMm' | 'drawnMm'>): boolean =>
  Math.abs(lengthMm - drawnMm) >= SAME_MM;

/** Said of a segment whose typed length is not the drawn one, else nothing. */
export const offScaleText = (s: Pick<BoardSegment, 'lengthMm' | 'drawnMm'>): string =>
  isOffScale(s) ? `not to scale: drawn ${mm(s.drawnMm)}` : '';
