import { z } from 'zod';
import { Id } from './ids';

/** Data fields of a title block, named after ISO 7200. */
export const TitleBlock = z.strictObject({
  title: z.string(),
  identificationNumber: z.string(),
  legalOwner: z.string(),
  creator: z.string(),
  approvalPerson: z.string().optional(),
  responsibleDepartment: z.string().optional(),
  technicalReference: z.string().optional(),
  documentType: z.string().optional(),
  supplementaryTitle: z.string().optional(),
  language: z.string().optional(),
  dateOfIssue: z.iso.date().optional(),
});
export type TitleBlock = z.infer<typeof TitleBlock>;

/** One line of the revision history. `current` is the last one. */
export const Revision = z.strictObject({
  id: Id,
  revision: z.string().min(1),
  date: z.iso.date().optional(),
  author: z.string(),
  description: z.string(),
  status: z.enum(['draft', 'released']),
  baseline: z.string().optional(),
});
export type Revision = z.infer<typeof Revision>;
