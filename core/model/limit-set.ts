import { z } from 'zod';

/** A number that a rule compares with, and where it comes from. */
export const Limit = z.strictObject({
  id: z.string().min(1),
  value: z.number(),
  unit: z.string(),
  source: z.string(),
  edition: z.string().optional(),
  /** False where the value was recalled and not seen in the source. */
  verified: z.boolean(),
});
export type Limit = z.infer<typeof Limit>;

/** Which of several published tables answers a question. */
export const TableChoice = z.strictObject({ id: z.string().min(1), table: z.string().min(1) });
export type TableChoice = z.infer<typeof TableChoice>;

/** The limits of a project: data, chosen per project and editable. What each id means: limit-sets/limit-ids.ts. */
export const LimitSet = z.strictObject({
  name: z.string().min(1),
  revision: z.string(),
  limits: z.array(Limit),
  tables: z.array(TableChoice).optional(),
});
export type LimitSet = z.infer<typeof LimitSet>;
