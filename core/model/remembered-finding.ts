import { z } from 'zod';
import { Id } from './ids';

/** Findings of one project that are remembered at most. */
export const REMEMBERED_FINDINGS = 5000;

/**
 * One finding as the machine remembers it, apart from the user's file. No word of the project: `finding` is made from its
 * key and `says` from what it said, so that only the finding itself can be recognised.
 */
export const RememberedFinding = z.strictObject({
  finding: Id,
  says: Id,
  first: z.iso.datetime(),
  changed: z.iso.datetime().nullable(),
});
export type RememberedFinding = z.infer<typeof RememberedFinding>;

export const RememberedFindings = z.array(RememberedFinding).max(REMEMBERED_FINDINGS);
