import type { DecidedValue, Decision, DecisionBasis } from '../model/decision';
import type { Project } from '../model/project';
import type { Finding } from '../rules/finding';
import { refText } from '../rules/refs';

/** A value that is not what it was when the decision was made; null where it was not there, or is no longer. */
export interface BasisChange {
  readonly label: string;
  readonly before: string | null;
  readonly after: string | null;
}

/**
 * What a finding goes by, for the record: how grave, with which result, on which values and limits. Names of its own
 * objects are replaced by their place, since a wire that is renamed is the same wire; where a value comes from is left
 * out, since the same value from a newer table is the same value.
 */
export function basisOf(project: Project, finding: Finding): DecisionBasis {
  const nameless = namesOut(project, finding);
  return {
    severity: finding.severity,
    result: finding.result,
    values: [
      ...Object.entries(finding.data).map(([label, value]): DecidedValue => ({
        label,
        value: typeof value === 'string' ? nameless(value) : value,
      })),
      ...finding.evidence.map(({ label, value, unit }): DecidedValue => ({
        label: nameless(label),
        value,
        ...(unit === undefined ? {} : { unit }),
      })),
      ...finding.needs.map(({ what }): DecidedValue => ({ label: 'missing', value: nameless(what) })),
    ],
  };
}

/**
 * What has changed between the record and the finding as it is now. A record without a basis cannot show that nothing
 * changed, so it counts as changed.
 */
export function basisChanges(project: Project, decision: Decision, finding: Finding): readonly BasisChange[] {
  const then = decision.basis;
  const now = basisOf(project, finding);
  if (!then)
    return [{ label: 'values it was decided on', before: null, after: 'cannot be compared: not on record' }];
  const named = namesIn(project, finding);
  const told = (label: string, before: string | null, after: string | null): BasisChange => ({
    label: named(label),
    before: before === null ? null : named(before),
    after: after === null ? null : named(after),
  });
  const changes: BasisChange[] = [];
  const compare = (label: string, before: string | null, after: string | null): void => {
    if (before !== after) changes.push(told(label, before, after));
  };
  compare('rule revision', String(decision.ruleRevision), String(finding.ruleRevision));
  compare('severity', then.severity, now.severity);
  compare('result', then.result, now.result);
  const old = byLabel(then.values);
  const fresh = byLabel(now.values);
  for (const label of new Set([...old.keys(), ...fresh.keys()])) {
    const [a, b] = [old.get(label) ?? [], fresh.get(label) ?? []];
    for (let i = 0; i < Math.max(a.length, b.length); i++) compare(label, a[i] ?? null, b[i] ?? null);
  }
  return changes;
}

function byLabel(values: readonly DecidedValue[]): ReadonlyMap<string, readonly string[]> {
  const out = new Map<string, string[]>();
  for (const { label, value, unit } of values) {
    const text = unit ? `${value} ${unit}` : String(value);
    const there = out.get(label);
    if (there) there.push(text);
    else out.set(label, [text]);
  }
  return out;
}

/**
 * Only names of letters and digits (W12) count: a wire that is called BK must not hide that its colour changed from BK,
 * nor one that is called 12 that 12 mm became 14.
 */
function namesOf(project: Project, finding: Finding): readonly (readonly [string, string])[] {
  const seen = new Set<string>();
  return finding.objects.flatMap((ref, i) => {
    const name = refText(project, ref);
    if (!/\d/.test(name) || !/[a-z]/i.test(name) || ref.type === 'part' || seen.has(name)) return [];
    seen.add(name);
    return [[name, `‹${i + 1}›`] as const];
  });
}

function namesOut(project: Project, finding: Finding): (text: string) => string {
  // Longer names first: "X1:3" before "X1".
  const names = [...namesOf(project, finding)].sort(([a], [b]) => b.length - a.length);
  return (text) => names.reduce((t, [name, mark]) => replaceWord(t, name, mark), text);
}

function namesIn(project: Project, finding: Finding): (text: string) => string {
  const names = namesOf(project, finding);
  return (text) => names.reduce((t, [name, mark]) => t.replaceAll(mark, name), text);
}

function replaceWord(text: string, word: string, by: string): string {
  const escaped = word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return text.replace(new RegExp(`(?<![\\w‹])${escaped}(?![\\w›])`, 'g'), by);
}
