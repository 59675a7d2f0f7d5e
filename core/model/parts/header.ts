import { z } from 'zod';
import { Finish, notNegative, partFields, positive } from './common';
import { matingHalfFields } from './mating-half';

export const SolderProcessKind = z.enum(['wave', 'reflow', 'hand']);
export type SolderProcessKind = z.infer<typeof SolderProcessKind>;

export const BoardLock = z.strictObject({
  material: z.enum(['metal', 'plastic']).optional(),
  holeMinMm: positive.optional(),
  holeMaxMm: positive.optional(),
  boardMinMm: positive.optional(),
  boardMaxMm: positive.optional(),
  plated: z.boolean().optional(),
});

/** A board-mounted mating half with its contacts already in it. */
export const HeaderPart = z.strictObject({
  ...partFields,
  kind: z.literal('header'),
  ...matingHalfFields,
  orientation: z.enum(['vertical', 'right-angle']).optional(),
  termination: z.enum(['through-hole', 'surface-mount']).optional(),
  finish: Finish.optional(),
  finishThicknessUm: positive.optional(),
  resistanceMohm: notNegative.optional(),
  /** Length of the solder tail below the seating plane. */
  tailLengthMm: positive.optional(),
  tailSectionMm: positive.optional(),
  /** Gap between the seating plane and the board. */
  standOffMm: notNegative.optional(),
  holeMm: positive.optional(),
  boardThicknessMinMm: positive.optional(),
  boardThicknessMaxMm: positive.optional(),
  processes: z.array(SolderProcessKind).optional(),
  reflowPeakMaxC: positive.optional(),
  reflowTimeMaxS: positive.optional(),
  boardLocks: z.array(BoardLock).optional(),
});
export type HeaderPart = z.infer<typeof HeaderPart>;
