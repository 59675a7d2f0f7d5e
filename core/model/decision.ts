import { z } from 'zod';
import { Id } from './ids';

/** A recorded decision on a finding, in the words of ISO 9000. Appended, never changed. */
export const Decision = z.strictObject({
  id: Id,
  number: z.string().min(1),
  kind: z.enum(['deviation-permit', 'concession']),
  /** Key of the finding and the rule revision it was made against. */
  finding: z.string(),
  rule: z.string(),
  ruleRevision: z.int().positive(),
  requirement: z.string(),
  measured: z.string(),
  limit: z.string(),
  items: z.string().optional(),
  quantity: z.int().positive().optional(),
  reason: z.string().min(1),
  mitigation: z.string().optional(),
  requester: z.string().min(1),
  approvals: z.array(
    z.strictObject({ name: z.string().min(1), role: z.string().min(1), date: z.iso.date() }),
  ),
  decidedOn: z.iso.date(),
  expiresOn: z.iso.date().optional(),
});
export type Decision = z.infer<typeof Decision>;
