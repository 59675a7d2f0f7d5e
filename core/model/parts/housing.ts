import { z } from 'zod';
import { partFields, positive } from './common';
import { matingHalfFields } from './mating-half';

/** An insulating body with cavities that take crimp contacts. */
export const HousingPart = z.strictObject({
  ...partFields,
  kind: z.literal('housing'),
  ...matingHalfFields,
  /** Contact series that latch in the cavities. */
  acceptedSeries: z.array(z.string()).optional(),
  /** Largest insulation diameter that enters a cavity. */
  wireOdMaxMm: positive.optional(),
  /** From the rear face to the wire stop: signed end allowance of a wire, positive into the housing. */
  datumMm: z.number().optional(),
  sealed: z.boolean().optional(),
  /** Part numbers (same maker) of the parts that belong to the housing. */
  cavityPlug: z.string().optional(),
  wireSeal: z.string().optional(),
  secondaryLock: z.string().optional(),
  /** How many ways round a contact may be inserted, 180 degrees apart. */
  contactOrientations: z.union([z.literal(1), z.literal(2)]).optional(),
});
export type HousingPart = z.infer<typeof HousingPart>;
