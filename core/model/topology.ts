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
  /** How it is drawn through its points; absent means straight runs. */
  shape: z.enum(['straight', 'curve']).optional(),
  /** Its length stays as it is while nodes are moved. */
  lengthLocked: z.boolean().optional(),
  /** Tightest bend of this run as it is installed, to the inside of the bend; wins over the drawn one. */
  bendRadiusMm: positive.optional(),
  /** Narrowest hole through which one end of the harness is threaded to lay this run. */
  holeMm: positive.optional(),
  /** Styles of wire that are approved for the place where this run lies. */
  wireStyles: z.array(z.string().min(1)).optional(),
  /** Gap that is kept along this run between its noisy and its quiet wires; absent: they lie in one bundle. */
  noiseGapMm: notNegative.optional(),
});
export type Segment = z.infer<typeof Segment>;

/** A place on a segment, measured along it from its `from` node. */
export const Station = z.strictObject({ segment: Id, atMm: notNegative });
export type Station = z.infer<typeof Station>;

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

/** A clamp or a grommet that holds the harness at a place of the equipment. */
export const Fixing = z.strictObject({
  id: Id,
  designator: z.string().min(1).optional(),
  part: Id,
  station: Station,
});
export type Fixing = z.infer<typeof Fixing>;

/** What a dimension is measured from or to. A connector is measured at the rear face of its body, where wires enter. */
export const Datum = z.discriminatedUnion('at', [
  z.strictObject({ at: z.literal('node'), node: Id }),
  z.strictObject({ at: z.literal('connector'), connector: Id }),
  z.strictObject({ at: z.literal('station'), station: Station }),
]);
export type Datum = z.infer<typeof Datum>;

/**
 * Lengths along the harness that the formboard states. A chain measures from each datum to the next, a baseline from the
 * first to each other one. The values are derived, never stored.
 */
export const Dimension = z.strictObject({
  id: Id,
  form: z.enum(['chain', 'baseline']),
  datums: z.array(Datum).min(2),
  /** Distance of the dimension line from what it measures; negative on the other side. */
  offsetMm: z.number(),
  plusMm: notNegative.optional(),
  minusMm: notNegative.optional(),
});
export type Dimension = z.infer<typeof Dimension>;

/** A printed mark and the object that carries it. */
export const Label = z.strictObject({
  id: Id,
  part: Id.optional(),
  text: z.string().min(1),
  /** The text was made by the label method of the project and follows it; absent: written by hand. */
  made: z.literal(true).optional(),
  /** From the wire stop of the end, the end of the jacket, or the rear face of the connector, to the near edge of the label. */
  datumDistanceMm: notNegative.optional(),
  on: z.discriminatedUnion('at', [
    z.strictObject({ at: z.literal('wire-end'), wire: Id, end: z.union([z.literal(0), z.literal(1)]) }),
    /** On the jacket; the ends are those of `cableEnds`. */
    z.strictObject({ at: z.literal('cable-end'), cable: Id, end: z.union([z.literal(0), z.literal(1)]) }),
    z.strictObject({ at: z.literal('connector'), connector: Id }),
    z.strictObject({ at: z.literal('station'), station: Station }),
  ]),
});
export type Label = z.infer<typeof Label>;
