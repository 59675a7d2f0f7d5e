/**
 * How far a solder tail stands out of the far side of the board, mm: tail length below the seating plane, less the gap
 * under the body, less the board. Negative when it ends in the hole. Plain geometry.
 */
export const tailProtrusionMm = (given: {
  readonly tailLengthMm: number;
  readonly standOffMm: number;
  readonly boardThicknessMm: number;
}): number => given.tailLengthMm - given.standOffMm - given.boardThicknessMm;
