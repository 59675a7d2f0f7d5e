import { z } from 'zod';
import { Point } from '../base/point';
import { Colour } from './colour';
import { Id } from './ids';
import { notNegative, positive } from './parts/common';

const preparation = { stripLengthMm: positive.optional() } as const;

/**
 * Where a wire ends and how that end is prepared. Two ends that name the same contact share one crimp; the
 * contact moves with its wire.
 */
export const WireEnd = z.discriminatedUnion('at', [
  z.strictObject({
    at: z.literal('cavity'),
    connector: Id,
    cavity: z.string().min(1),
    contact: Id.optional(),
    seal: Id.optional(),
    ...preparation,
  }),
  z.strictObject({ at: z.literal('splice'), splice: Id, ...preparation }),
  z.strictObject({
    at: z.literal('free'),
    position: Point,
    terminal: Id.optional(),
    node: Id.optional(),
    text: z.string().optional(),
    ...preparation,
  }),
]);
export type WireEnd = z.infer<typeof WireEnd>;
export type CavityEnd = Extract<WireEnd, { at: 'cavity' }>;

/** One conductor from one end to another: a wire of its own, or a core of a placed cable. */
export const Wire = z.strictObject({
  id: Id,
  designator: z.string().min(1),
  part: Id.optional(),
  core: z.strictObject({ cable: Id, name: z.string() }).optional(),
  colour: Colour.optional(),
  signal: Id.optional(),
  ends: z.tuple([WireEnd, WireEnd]),
  /** Typed cut length; wins over the route. */
  lengthMm: positive.optional(),
  /** Added to the routed length. */
  extraMm: z.number().optional(),
  /** Segments that the wire must follow; absent means the shortest way. */
  path: z.array(Id).optional(),
  note: z.string().optional(),
});
export type Wire = z.infer<typeof Wire>;

/** A placed cable; its cores are wires that name it. */
export const Cable = z.strictObject({
  id: Id,
  designator: z.string().min(1),
  part: Id,
  note: z.string().optional(),
});
export type Cable = z.infer<typeof Cable>;

/** Wires that are handled together. */
export const Group = z.strictObject({
  id: Id,
  designator: z.string().min(1),
  form: z.enum(['twisted', 'shielded', 'twisted-shielded', 'bundled']),
  wires: z.array(Id),
  layMm: positive.optional(),
  shieldEnds: z.enum(['a', 'b', 'both', 'none']).optional(),
  /** Longest stretch at an end over which the wires lie untwisted or out of their shield. */
  exposedMm: notNegative.optional(),
});
export type Group = z.infer<typeof Group>;

/** A joint in which two or more wire ends meet. */
export const Splice = z.strictObject({
  id: Id,
  designator: z.string().min(1),
  part: Id.optional(),
  position: Point,
  node: Id.optional(),
});
export type Splice = z.infer<typeof Splice>;
