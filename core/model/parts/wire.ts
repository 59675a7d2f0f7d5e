import { z } from 'zod';
import { Colour } from '../colour';
import { WireSize } from '../wire-size';
import { partFields, positive } from './common';

export const Stranding = z.strictObject({ strands: z.int().positive(), strandDiameterMm: positive });

const conductorFields = {
  size: WireSize,
  /** Metal area of this very conductor; differs from the designation by construction. */
  areaMm2: positive.optional(),
  stranding: Stranding.optional(),
  odMinMm: positive.optional(),
  odMm: positive.optional(),
  odMaxMm: positive.optional(),
  conductorFinish: z.enum(['bare', 'tin', 'silver', 'nickel']).optional(),
  resistanceOhmPerKm: positive.optional(),
  insulation: z.string().optional(),
} as const;

/** A single insulated wire by the metre. */
export const WirePart = z.strictObject({
  ...partFields,
  kind: z.literal('wire'),
  ...conductorFields,
  voltageMaxV: positive.optional(),
  /** Colours in which it can be ordered; absent means not known. */
  colours: z.array(Colour).optional(),
  bendFactor: positive.optional(),
  style: z.string().optional(),
  massGPerM: positive.optional(),
});
export type WirePart = z.infer<typeof WirePart>;

/** Several cores in one covering, by the metre. */
export const CablePart = z.strictObject({
  ...partFields,
  kind: z.literal('cable'),
  odMm: positive.optional(),
  voltageMaxV: positive.optional(),
  cores: z.array(z.strictObject({ name: z.string(), colour: Colour.optional(), ...conductorFields })),
  shield: z.enum(['none', 'braid', 'foil', 'braid-and-foil']).optional(),
  drainWire: z.boolean().optional(),
  jacketColour: Colour.optional(),
  bendFactor: positive.optional(),
  style: z.string().optional(),
  massGPerM: positive.optional(),
});
export type CablePart = z.infer<typeof CablePart>;

/** The fields that say what a conductor is, common to a wire and a core of a cable. */
export type Conductor = Pick<
  WirePart,
  'size' | 'areaMm2' | 'stranding' | 'odMinMm' | 'odMm' | 'odMaxMm' | 'conductorFinish' | 'resistanceOhmPerKm'
>;
