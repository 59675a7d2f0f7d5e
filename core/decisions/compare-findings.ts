import type { Project } from '../model/project';
import type { Finding } from '../rules/finding';
import { basisOf } from './basis';

/** A checked project: its findings are told by its names. */
export interface Checked {
  readonly project: Project;
  readonly findings: readonly Finding[];
}

export interface FindingChanges {
  readonly gone: readonly Finding[];
  readonly added: readonly Finding[];
  /** Same rule at the same objects, but another severity, result, value or limit. */
  readonly changed: readonly { readonly before: Finding; readonly after: Finding }[];
}

/** How the findings differ before and after a change, by their keys. */
export function compareFindings(before: Checked, after: Checked): FindingChanges {
  const old = new Map(before.findings.map((f) => [f.key, f]));
  const fresh = new Map(after.findings.map((f) => [f.key, f]));
  const changed = [...fresh.values()].flatMap((f) => {
    const was = old.get(f.key);
    if (!was || was === f || fingerprint(before.project, was) === fingerprint(after.project, f)) return [];
    return [{ before: was, after: f }];
  });
  return {
    gone: [...old.values()].filter((f) => !fresh.has(f.key)),
    added: [...fresh.values()].filter((f) => !old.has(f.key)),
    changed,
  };
}

/** A text that is the same as long as a finding says the same of the same values. */
export const fingerprint = (project: Project, finding: Finding): string =>
  JSON.stringify([finding.ruleRevision, basisOf(project, finding)]);
