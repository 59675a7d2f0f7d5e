import { z } from 'zod';
import { Id } from './ids';

const Words = z.string().min(1);

/** A value that a finding went by when it was decided on. */
export const DecidedValue = z.strictObject({
  label: z.string(),
  value: z.union([z.string(), z.number()]),
  unit: z.string().optional(),
});
export type DecidedValue = z.infer<typeof DecidedValue>;

/** What was accepted, kept so that it can be told when something else stands there now. See core/decisions/basis.ts. */
export const DecisionBasis = z.strictObject({
  severity: z.enum(['critical', 'major', 'minor', 'note']),
  result: z.enum(['fail', 'cannot-verify']),
  values: z.array(DecidedValue),
});
export type DecisionBasis = z.infer<typeof DecisionBasis>;

/** Harnesses that were built or used under a decision that is bound to a quantity. */
export const DecisionUse = z.strictObject({
  date: z.iso.date(),
  quantity: z.int().positive(),
  /** Serial or lot numbers. */
  items: z.string().optional(),
  recordedBy: Words,
});
export type DecisionUse = z.infer<typeof DecisionUse>;

/**
 * A recorded decision on a finding, in the words of ISO 9000:2015: a deviation permit (3.12.6) before the harness is
 * built, a concession (3.12.5) after. Appended, never changed: only uses and the closing are added to it later.
 */
export const Decision = z.strictObject({
  id: Id,
  number: Words,
  kind: z.enum(['deviation-permit', 'concession']),
  /** Key of the finding and the rule revision it was made against. */
  finding: z.string(),
  rule: z.string(),
  ruleRevision: z.int().positive(),
  requirement: z.string(),
  measured: z.string(),
  limit: z.string(),
  /** Serial or lot numbers, places: what it is limited to. */
  items: z.string().optional(),
  /** How many harnesses it covers. */
  quantity: z.int().positive().optional(),
  reason: Words,
  risk: z.string().optional(),
  mitigation: z.string().optional(),
  conditions: z.string().optional(),
  requester: Words,
  approvals: z.array(z.strictObject({ name: Words, role: Words, date: z.iso.date() })),
  decidedOn: z.iso.date(),
  /** Last day on which it holds. */
  expiresOn: z.iso.date().optional(),
  basis: DecisionBasis.optional(),
  uses: z.array(DecisionUse).optional(),
  closed: z.strictObject({ date: z.iso.date(), by: Words, reason: Words }).optional(),
});
export type Decision = z.infer<typeof Decision>;
