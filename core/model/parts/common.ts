import { z } from 'zod';
import { Id } from '../ids';

/** Where a record comes from, so that every number taken from it can show its source. */
export const Source = z.strictObject({
  document: z.string(),
  revision: z.string().optional(),
  date: z.iso.date().optional(),
});

/** One supplier's terms. Price breaks are per piece (or per metre for wire and coverings) from a quantity on. */
export const Offer = z.strictObject({
  supplier: z.string(),
  /** The supplier's own number, never to be taken for the maker's. */
  orderCode: z.string().optional(),
  /** How contacts of this offer come; absent: as the record says. */
  form: z.enum(['strip', 'loose']).optional(),
  currency: z.string().length(3),
  minimum: z.number().positive().optional(),
  multiple: z.number().positive().optional(),
  leadTimeDays: z.number().nonnegative().optional(),
  priceBreaks: z.array(z.strictObject({ quantity: z.number().positive(), price: z.number().nonnegative() })),
  priceDate: z.iso.date().optional(),
  /** What the supplier had on the shelf on that day. */
  stock: z.strictObject({ quantity: z.number().nonnegative(), date: z.iso.date() }).optional(),
});
export type Offer = z.infer<typeof Offer>;

export const Compliance = z.strictObject({
  regime: z.string(),
  status: z.enum(['declared', 'exempt', 'not-compliant', 'unknown']),
  date: z.iso.date().optional(),
  expires: z.iso.date().optional(),
  document: z.string().optional(),
});
export type Compliance = z.infer<typeof Compliance>;

export const Lifecycle = z.enum(['active', 'not-for-new-designs', 'last-time-buy', 'obsolete']);
export type Lifecycle = z.infer<typeof Lifecycle>;

/** Fields that every part has. An absent field means "not known", never "none". */
export const partFields = {
  id: Id,
  maker: z.string().min(1),
  partNumber: z.string().min(1),
  description: z.string(),
  catalogue: z.strictObject({ name: z.string(), revision: z.string() }).optional(),
  lifecycle: Lifecycle.optional(),
  replacedBy: z.string().optional(),
  alternates: z.array(z.string()).optional(),
  compliance: z.array(Compliance).optional(),
  origin: z.string().optional(),
  tariffCode: z.string().optional(),
  /** Days that it may lie before it is used: adhesives, some seals. */
  shelfLifeDays: z.int().positive().optional(),
  massG: z.number().nonnegative().optional(),
  temperatureMaxC: z.number().optional(),
  offers: z.array(Offer).optional(),
  source: Source.optional(),
} as const;

export const positive = z.number().positive();
export const notNegative = z.number().nonnegative();

/** Surface of a contact where it mates. */
export const Finish = z.enum(['tin', 'gold', 'silver', 'nickel', 'palladium-nickel']);
export type Finish = z.infer<typeof Finish>;

export const ContactKind = z.enum(['pin', 'socket']);
export type ContactKind = z.infer<typeof ContactKind>;
