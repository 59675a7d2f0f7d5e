import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { alternateChecked } from '../rules/alternate-checked';
import type { CheckResult } from '../rules/check-harness';
import type { Finding } from '../rules/finding';
import { alternateFinding, unrecordedFinding } from './alternate-finding';
import { alternatesOnRecord, type NamedAlternates } from './alternates-on-record';
import { checkAlternate, type AlternateCheck } from './check-alternate';
import { completes, rawCheckOf } from './raw-check';

/** Every alternate on record, tried in the place of its part. */
export interface AlternatesChecked {
  /** Records that were gone by: parts, their alternates, and the numbers of those that nobody has. */
  readonly subject: readonly unknown[];
  readonly checks: readonly AlternateCheck[];
  /** What is to be said of them, in place of what the rule says by the records alone. */
  readonly findings: readonly Finding[];
  /** How many stand in for their part without a word. */
  readonly passed: number;
}

/** Whether an answer speaks of the same parts and alternates that are on record now; what was said of them may be a moment old. */
export const speaksOf = (
  answer: AlternatesChecked,
  project: Project,
  catalogue: readonly Part[],
): boolean => {
  const now = subjectOf(alternatesOnRecord(project, catalogue));
  return now.length === answer.subject.length && now.every((x, i) => x === answer.subject[i]);
};

const subjectOf = (named: readonly NamedAlternates[]): readonly unknown[] =>
  named.flatMap(({ part, records, missing }) => [
    part,
    ...records.flatMap(({ alternate, inProject }) => [alternate, inProject]),
    ...missing,
  ]);

/**
 * Tries every alternate that bought parts name and that the project or a catalogue has on record. Not part of an edit: asked
 * for when the design rests, before a document is made, and by the command line. `previous` makes it as cheap as an edit.
 */
export function checkAlternates(
  check: CheckResult,
  catalogue: readonly Part[],
  previous?: AlternatesChecked,
): AlternatesChecked {
  const { project } = check.harness;
  const checks: AlternateCheck[] = [];
  const findings: Finding[] = [];
  let passed = 0;
  const named = alternatesOnRecord(project, catalogue);
  for (const { part, records, missing } of named) {
    if (missing.length > 0) findings.push(unrecordedFinding(part, missing));
    for (const { alternate, inProject } of records) {
      const before = previous?.checks.find((c) => c.partId === part.id && c.alternate === alternate);
      const tried = checkAlternate(check, part.id, alternate, before);
      checks.push(tried);
      const finding = alternateFinding(project, part, tried, inProject);
      if (finding) findings.push(finding);
      else passed++;
    }
  }
  return { subject: subjectOf(named), checks, findings, passed };
}

/** The check with what the alternates would break in place of what their records alone tell. */
export function withAlternates(check: CheckResult, alternates: AlternatesChecked): CheckResult {
  const raw = rawCheckOf(check);
  const rule = alternateChecked.meta.id;
  const { findings, passed } = alternates;
  if (findings.length === 0 && !raw.findings.some((f) => f.rule === rule)) return raw;
  const completed: CheckResult = {
    harness: raw.harness,
    findings: [...raw.findings.filter((f) => f.rule !== rule), ...findings],
    tally() {
      const fail = findings.filter((f) => f.result === 'fail').length;
      const all = new Map(raw.tally());
      return all.set(rule, { pass: passed, fail, cannotVerify: findings.length - fail });
    },
  };
  return completes(completed, raw);
}
