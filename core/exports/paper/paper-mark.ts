import type { Finding, Severity } from '../../rules/finding';

/** Marks of findings on paper: octagon, triangle, diamond, dot, and an open ring for what could not be verified. */
export type MarkKind = Severity | 'unknown';

export const markOfFinding = (finding: Finding): MarkKind =>
  finding.result === 'fail' ? finding.severity : 'unknown';
