import { z } from 'zod';

export const SEVERITIES = ['critical', 'major', 'minor', 'note'] as const;
export const Severity = z.enum(SEVERITIES);
export type Severity = z.infer<typeof Severity>;

/** An object that a finding sits at. A cavity is named together with its connector. */
export const ObjectRef = z.strictObject({
  type: z.enum([
    'connector',
    'cavity',
    'wire',
    'mate',
    'contact',
    'cable',
    'group',
    'splice',
    'fuse',
    'part',
    'equipment',
    'signal',
    'node',
    'segment',
    'covering',
    'tie',
    'fixing',
    'label',
    'dimension',
    'project',
  ]),
  id: z.string(),
  cavity: z.string().optional(),
});
export type ObjectRef = z.infer<typeof ObjectRef>;

/** A value that the rule used, and where it was taken from. */
export const Evidence = z.strictObject({
  label: z.string(),
  value: z.union([z.string(), z.number()]),
  unit: z.string().optional(),
  /** "catalogue Bench 3 rev 2, contact LC-100", "typed", "limit set General". */
  source: z.string(),
});
export type Evidence = z.infer<typeof Evidence>;

/** A command that would mend the design, ready to dispatch. */
export const Fix = z.strictObject({ label: z.string(), command: z.string(), args: z.unknown() });
export type Fix = z.infer<typeof Fix>;

/** An input whose absence keeps a rule from deciding, and the field to fill in. */
export const Need = z.strictObject({
  what: z.string(),
  at: ObjectRef.optional(),
  field: z.string().optional(),
});
export type Need = z.infer<typeof Need>;

/** What a rule found at some objects. It carries ids and data; sentences are made from it by `findingText`. */
export const Finding = z.strictObject({
  /** Same rule at the same objects: same key, also after the project was saved and opened. */
  key: z.string(),
  rule: z.string(),
  ruleRevision: z.int(),
  severity: Severity,
  result: z.enum(['fail', 'cannot-verify']),
  /**
   * An open point: nothing is wrong yet, something is still to be said before a release (a length, a mate, the state
   * of a cavity). Shown apart from faults while the harness is being drawn; counts like any finding in a check.
   */
  open: z.boolean(),
  objects: z.array(ObjectRef),
  data: z.record(z.string(), z.union([z.string(), z.number()])),
  evidence: z.array(Evidence),
  needs: z.array(Need),
  fix: Fix.optional(),
});
export type Finding = z.infer<typeof Finding>;
