import { z } from 'zod';
import { ContactKind, notNegative, positive } from './common';

/**
 * Body form, contact kind and mounting are three independent attributes: none is ever inferred from another.
 */
export const BodyForm = z.enum(['plug', 'receptacle']);
export type BodyForm = z.infer<typeof BodyForm>;

export const Mounting = z.enum(['free', 'panel', 'board']);
export type Mounting = z.infer<typeof Mounting>;

/** How cavities are counted over the rows, seen on the mating face. */
export const Numbering = z.enum(['row-wise', 'zig-zag', 'loop']);
export type Numbering = z.infer<typeof Numbering>;

/** Corner of the mating face at which cavity 1 sits. */
export const Corner = z.enum(['top-left', 'top-right', 'bottom-left', 'bottom-right']);
export type Corner = z.infer<typeof Corner>;

/** A current limit and the conditions it was stated for. */
export const CurrentRating = z.strictObject({
  currentA: positive,
  loadedWays: z.int().positive().optional(),
  areaMm2: positive.optional(),
  ambientC: z.number().optional(),
});

export const PanelFit = z.strictObject({
  thicknessMinMm: positive.optional(),
  thicknessMaxMm: positive.optional(),
  cutOut: z
    .strictObject({ widthMm: positive, heightMm: positive, cornerRadiusMm: notNegative.optional() })
    .optional(),
  insertFrom: z.enum(['front', 'rear']).optional(),
});
export type PanelFit = z.infer<typeof PanelFit>;

/** Outside of a half: across the mating axis, and along it. */
export const BodySize = z.strictObject({
  widthMm: positive.optional(),
  heightMm: positive.optional(),
  lengthMm: positive.optional(),
});

/** What a housing and a header have in common: one half of a mating pair. */
export const matingHalfFields = {
  family: z.string().optional(),
  /** Name of the mating interface; two halves of different interfaces never mate. */
  interface: z.string().optional(),
  bodyForm: BodyForm.optional(),
  contactKind: ContactKind.optional(),
  mounting: Mounting.optional(),
  ways: z.int().positive(),
  rows: z.int().positive().optional(),
  pitchMm: positive.optional(),
  rowPitchMm: positive.optional(),
  numbering: Numbering.optional(),
  cavityOneCorner: Corner.optional(),
  /** Keying code; "none" states that the body has no keying, absence that it is not known. */
  keying: z.string().optional(),
  latchSide: z.enum(['top', 'bottom', 'left', 'right', 'both', 'none']).optional(),
  fingerRoomMm: notNegative.optional(),
  body: BodySize.optional(),
  /** How far a half is drawn back until it is clear of the other. */
  mateTravelMm: positive.optional(),
  /** Positions closed by the maker as a key: no contact can be loaded there. */
  keyPositions: z.array(z.string()).optional(),
  /** Positions whose contacts meet before the others and part after them; an empty list says that there are none. */
  firstMatePositions: z.array(z.string()).optional(),
  panel: PanelFit.optional(),
  voltageMaxV: positive.optional(),
  /** Along the insulation between the live metal of positions next to each other in a row. */
  creepageMm: positive.optional(),
  currentRatings: z.array(CurrentRating).optional(),
  cycles: z.int().positive().optional(),
  mateForceN: positive.optional(),
  breaksUnderLoad: z.boolean().optional(),
} as const;
