import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from './ids';
import { notNegative, positive } from './parts/common';

/** A point of the harness on the formboard, at true scale. */
export const Node = z.strictObject({ id: Id, designator: z.string().min(1), position: Point });
export type Node = z.infer<typeof Node>;

/** A run between two nodes. The typed length wins over the drawn one. */
export const Segment = z.strictObject({
  id: Id,
  designator: z.string().min(1),
  from: Id,
  to: Id,
  lengthMm: positive.optional(),
  plusMm: notNegative.optional(),
  minusMm: notNegative.optional(),
  via: z.array(Point).optional(),
  /** Tightest bend of this run as it is installed, to the inside of the bend; wins over the drawn one. */
  bendRadiusMm: positive.optional(),
  /** Narrowest hole through which one end of the harness is threaded to lay this run. */
  holeMm: positive.optional(),
  /** Styles of wire that are approved for the place where this run lies. */
  wireStyles: z.array(z.string().min(1)).optional(),
});
export type Segment = z.infer<typeof Segment>;

const Station = z.strictObject({ segment: Id, atMm: notNegative });

/** Tube, sleeve, tape … from one station to another; layer 1 lies on the wires. */
export const Covering = z.strictObject({
  id: Id,
  designator: z.string().min(1).optional(),
  part: Id,
  from: Station,
  to: Station,
  layer: z.int().positive(),
});
export type Covering = z.infer<typeof Covering>;

export const Tie = z.strictObject({ id: Id, part: Id, station: Station });
export type Tie = z.infer<typeof Tie>;

/** A printed mark and the object that carries it. */
export const Label = z.strictObject({
  id: Id,
  part: Id.optional(),
  text: z.string().min(1),
  on: z.discriminatedUnion('at', [
    z.strictObject({ at: z.literal('wire-end'), wire: Id, end: z.union([z.literal(0), z.literal(1)]) }),
    z.strictObject({ at: z.literal('connector'), connector: Id }),
    z.strictObject({ at: z.literal('station'), station: Station }),
  ]),
});
export type Label = z.infer<typeof Label>;
