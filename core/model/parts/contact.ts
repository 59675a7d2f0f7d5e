import { z } from 'zod';
import { WireSize } from '../wire-size';
import { ContactKind, Finish, notNegative, partFields, positive } from './common';

/** How one wire size is crimped into this contact, with the tool it was proved with. */
export const CrimpSpec = z.strictObject({
  size: WireSize,
  /** The other wire, where two share the crimp; absent for a crimp of one. */
  second: WireSize.optional(),
  wirePart: z.string().optional(),
  heightMm: positive.optional(),
  heightToleranceMm: notNegative.optional(),
  widthMm: positive.optional(),
  insulationHeightMm: positive.optional(),
  pullForceMinN: positive.optional(),
  tool: z.string().optional(),
  die: z.string().optional(),
  source: z.string().optional(),
});

/** A crimp contact. Ranges are those its maker states; absent means not known. */
export const ContactPart = z.strictObject({
  ...partFields,
  kind: z.literal('contact'),
  series: z.string().optional(),
  contactKind: ContactKind.optional(),
  /** Thinnest and thickest wire by designation, both in one system. */
  sizeMin: WireSize.optional(),
  sizeMax: WireSize.optional(),
  /** Conductor metal area that the barrel takes. */
  areaMinMm2: positive.optional(),
  areaMaxMm2: positive.optional(),
  /** Insulation diameter that the insulation support grips. */
  insulationMinMm: positive.optional(),
  insulationMaxMm: positive.optional(),
  stripLengthMm: positive.optional(),
  stripToleranceMm: notNegative.optional(),
  finish: Finish.optional(),
  finishThicknessUm: positive.optional(),
  resistanceMohm: notNegative.optional(),
  currentMaxA: positive.optional(),
  cycles: z.int().positive().optional(),
  strandedOnly: z.boolean().optional(),
  form: z.enum(['strip', 'loose']).optional(),
  pack: z.int().positive().optional(),
  /** Pairs of wire sizes that the maker approves in one crimp; an empty list says that none is. */
  doubleCrimps: z.array(z.tuple([WireSize, WireSize])).optional(),
  crimps: z.array(CrimpSpec).optional(),
  /** Signed end allowance: conductor beyond the housing's wire stop, to be cut in addition. */
  allowanceMm: z.number().optional(),
  tools: z.array(z.string()).optional(),
});
export type ContactPart = z.infer<typeof ContactPart>;
