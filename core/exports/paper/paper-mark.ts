import { z } from 'zod';
import { SEVERITIES, type Finding } from '../../rules/finding';

/** Marks of findings on paper: octagon, triangle, diamond, dot, and an open ring for what could not be verified. */
export const MarkKind = z.enum([...SEVERITIES, 'unknown']);
export type MarkKind = z.infer<typeof MarkKind>;

export const markOfFinding = (finding: Finding): MarkKind =>
  finding.result === 'fail' ? finding.severity : 'unknown';
