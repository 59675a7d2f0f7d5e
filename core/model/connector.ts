import { z } from 'zod';
import { Point } from '../base/point';
import { Id } from './ids';
import { notNegative, positive } from './parts/common';
import { Corner, PanelFit } from './parts/mating-half';

/** What the layout of the board provides for a header, as far as it is known. */
export const Footprint = z.strictObject({
  pitchMm: positive.optional(),
  /** Holes for board locks and pegs. */
  lockHoleMm: positive.optional(),
  lockHolePlated: z.boolean().optional(),
  /** Corner of the pad pattern at which pad 1 lies, the header turned as its record draws the mating face. */
  padOneCorner: Corner.optional(),
  /** From which side of the board the layout shows the pads. */
  seenFrom: z.enum(['header-side', 'far-side']).optional(),
  /** Whether the mating face of a right-angle header looks over the edge of the board. */
  facesEdge: z.boolean().optional(),
});
export type Footprint = z.infer<typeof Footprint>;

/** A hole in a panel as it is drawn, and the side from which the connector is put in. */
export const CutOut = PanelFit.shape.cutOut.unwrap().extend({
  insertFrom: PanelFit.shape.insertFrom,
  /** From which side it is punched: the burr stands out on the other. */
  punchedFrom: PanelFit.shape.insertFrom,
});
export type CutOut = z.infer<typeof CutOut>;

/**
 * What is known of one cavity beyond the wires that end in it. A cavity in which a wire ends is wired, whatever
 * stands here; one without an entry and without a wire is undeclared.
 */
export const CavityEntry = z.strictObject({
  cavity: z.string().min(1),
  state: z.enum(['plugged', 'spare-contact', 'empty', 'blocked']).optional(),
  /** Contact that sits here without a wire. */
  contact: Id.optional(),
  /** Cavity plug part. */
  plug: Id.optional(),
  /** Signal that the device's interface assigns to this position. */
  signal: Id.optional(),
});
export type CavityEntry = z.infer<typeof CavityEntry>;

/** Part that is fitted to a connector: secondary lock, strain relief, cap. */
export const Accessory = z.strictObject({ id: Id, part: Id, quantity: z.int().positive() });

/** A placed housing or header. */
export const Connector = z.strictObject({
  id: Id,
  designator: z.string().min(1),
  part: Id,
  position: Point,
  /** Side of the symbol at which wires of a single row leave. */
  exit: z.enum(['left', 'right']),
  view: z.enum(['mating-face', 'wire-entry-face']),
  equipment: Id.optional(),
  /** Who brings it: bought with the harness, or comes soldered on the board or built into the equipment. */
  supply: z.enum(['harness', 'equipment']),
  node: Id.optional(),
  /** Direction of the mating axis on the formboard, clockwise from right; absent means in line with the run at its node. */
  formboardAngleDeg: z.number().optional(),
  cavities: z.array(CavityEntry),
  accessories: z.array(Accessory),
  /** States that the connector is meant to stay unmated. */
  unmated: z.boolean().optional(),
  plannedCycles: z.int().positive().optional(),
  serviceLoopMm: positive.optional(),
  footprint: Footprint.optional(),
  /** The hole that the drawing of the panel has for it. */
  cutOut: CutOut.optional(),
  /** Free length on the mating axis, from the mating face of the other half to what stands in the way. */
  mateRoomMm: notNegative.optional(),
  /** Free gap beside the latch, as installed. */
  latchRoomMm: notNegative.optional(),
  description: z.string().optional(),
  note: z.string().optional(),
});
export type Connector = z.infer<typeof Connector>;

/** Two connectors plugged together. The map is needed only where the numbers of the two halves differ. */
export const Mate = z.strictObject({
  id: Id,
  a: Id,
  b: Id,
  map: z.array(z.strictObject({ a: z.string(), b: z.string() })).optional(),
});
export type Mate = z.infer<typeof Mate>;

/** A contact as an object: it is crimped on wire ends, or sits in a cavity as a spare. */
export const Contact = z.strictObject({ id: Id, part: Id });
export type Contact = z.infer<typeof Contact>;
