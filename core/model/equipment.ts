import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from './ids';
import { notNegative, positive } from './parts/common';
import { SolderProcessKind } from './parts/header';

/** What carries headers and panel connectors. Drawn on the diagram as an area that holds its connectors. */
const common = {
  id: Id,
  designator: z.string().min(1),
  description: z.string().optional(),
  position: Point,
  widthMm: positive,
  heightMm: positive,
} as const;

/** A printed board. The peak and time are those of the process the board goes through. */
export const Board = z.strictObject({
  ...common,
  kind: z.literal('board'),
  thicknessMm: positive.optional(),
  solderProcess: z
    .strictObject({ process: SolderProcessKind, peakC: positive.optional(), timeS: positive.optional() })
    .optional(),
});

/** A sheet with cut-outs. Coatings are the sum over both faces and count as thickness for a latch. */
export const Panel = z.strictObject({
  ...common,
  kind: z.literal('panel'),
  thicknessMm: positive.optional(),
  coatingsMm: notNegative.optional(),
});

/** Anything else a connector belongs to: a motor, a lamp, a unit that is bought complete. */
export const Device = z.strictObject({ ...common, kind: z.literal('device') });

export const Equipment = z.discriminatedUnion('kind', [Board, Panel, Device]);
export type Equipment = z.infer<typeof Equipment>;
export type Board = z.infer<typeof Board>;
export type Panel = z.infer<typeof Panel>;
