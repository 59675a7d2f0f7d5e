import { z } from 'zod';
import { Part } from '../model/parts/part';

export const CATALOGUE_FORMAT = 'latchwork-catalogue';

/** A library of parts: one JSON file. */
export const Catalogue = z.strictObject({
  format: z.literal(CATALOGUE_FORMAT),
  formatVersion: z.literal(1),
  name: z.string().min(1),
  revision: z.string(),
  date: z.iso.date().optional(),
  note: z.string().optional(),
  parts: z.array(Part),
});
export type Catalogue = z.infer<typeof Catalogue>;
