import type { CheckResult } from '../rules/check-harness';

const raw = new WeakMap<CheckResult, CheckResult>();

/** What the rules alone said, where a check was completed by what the alternates would break; else the check itself. */
export const rawCheckOf = (check: CheckResult): CheckResult => raw.get(check) ?? check;

/** Notes which check a completed one was made from, so that the next check may go on from it. */
export function completes(completed: CheckResult, check: CheckResult): CheckResult {
  raw.set(completed, rawCheckOf(check));
  return completed;
}
