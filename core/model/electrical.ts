import { z } from 'zod';
import { Id } from './ids';
import { notNegative, positive } from './parts/common';

export const SignalClass = z.enum(['power', 'return', 'signal', 'shield', 'neutral', 'protective-earth']);
export type SignalClass = z.infer<typeof SignalClass>;

/** What travels on a net, as the interface documents state it. */
export const Signal = z.strictObject({
  id: Id,
  name: z.string().min(1),
  class: SignalClass.optional(),
  voltageV: z.number().optional(),
  currentA: notNegative.optional(),
  peakCurrentA: notNegative.optional(),
  peakS: positive.optional(),
  /** Connector position that feeds it, where it is known. */
  source: z.strictObject({ connector: Id, cavity: z.string() }).optional(),
  /** Current at which the source itself limits or opens, where it does. */
  sourceLimitA: positive.optional(),
  liveMating: z.boolean().optional(),
  noiseClass: z.enum(['quiet', 'ordinary', 'noisy']).optional(),
  pairedWith: Id.optional(),
  returnsOn: Id.optional(),
  redundantTo: Id.optional(),
});
export type Signal = z.infer<typeof Signal>;

/** A fuse in a wire, a given length from the source. */
export const Fuse = z.strictObject({
  id: Id,
  designator: z.string().min(1),
  part: Id.optional(),
  wire: Id,
  ratedA: positive.optional(),
  fromSourceMm: notNegative.optional(),
});
export type Fuse = z.infer<typeof Fuse>;
