import { memoByIdentity } from '../base/memo-by-identity';
import type { Decision } from '../model/decision';
import type { Project } from '../model/project';
import type { Finding } from '../rules/finding';
import { holdingOf, type Holding } from './holding';

export const STANDINGS = ['open', 'reopened', 'expired', 'exhausted', 'accepted'] as const;
export type StandingState = (typeof STANDINGS)[number];

/** A decision on a finding and whether it covers it. */
export interface Judged {
  readonly decision: Decision;
  readonly holding: Holding;
}

/**
 * Where a finding stands on a day. `accepted`: a decision covers it. `expired`, `exhausted`, `reopened` (value, limit or
 * rule revision changed): a decision covered it and does no longer. `open`: nobody decided, or what was recorded does
 * not count. Only `accepted` is not open for a release.
 */
export interface Standing {
  readonly state: StandingState;
  /** The decision that the state comes from. */
  readonly by: Judged | undefined;
  /** Every decision on record for the finding, in the order in which they were made. */
  readonly judged: readonly Judged[];
}

const NOBODY_DECIDED: Standing = { state: 'open', by: undefined, judged: [] };

const STATE_OF: Readonly<Record<Holding['state'], StandingState>> = {
  'holds': 'accepted',
  'not-yet': 'open',
  'closed': 'open',
  'unbounded': 'open',
  'under-approved': 'open',
  'expired': 'expired',
  'exhausted': 'exhausted',
  'changed': 'reopened',
}; // prettier-ignore

const decisionsByFinding = memoByIdentity(
  (decisions: readonly Decision[]): ReadonlyMap<string, readonly Decision[]> => {
    const out = new Map<string, Decision[]>();
    for (const d of decisions) {
      const there = out.get(d.finding);
      if (there) there.push(d);
      else out.set(d.finding, [d]);
    }
    return out;
  },
);

/** The standing of one finding on the day `date` (YYYY-MM-DD). Of several decisions one that holds wins, else the last. */
export function standingOf(project: Project, finding: Finding, date: string): Standing {
  const decisions = decisionsByFinding(project.decisions).get(finding.key);
  if (!decisions) return NOBODY_DECIDED;
  const judged = decisions.map((decision): Judged => ({
    decision,
    holding: holdingOf(project, decision, finding, date),
  }));
  const by = judged.findLast((j) => j.holding.state === 'holds') ?? judged.at(-1);
  return { state: by ? STATE_OF[by.holding.state] : 'open', by, judged };
}

/** The standing of each finding, by its key. */
export const standingsOf = (
  project: Project,
  findings: readonly Finding[],
  date: string,
): ReadonlyMap<string, Standing> => new Map(findings.map((f) => [f.key, standingOf(project, f, date)]));

export const isAccepted = (standing: Standing | undefined): boolean => standing?.state === 'accepted';

/** Findings that still want an answer on the day `date`: those that no decision covers. */
export const uncovered = (
  project: Project,
  findings: readonly Finding[],
  date: string,
): readonly Finding[] =>
  project.decisions.length === 0
    ? findings
    : findings.filter((f) => !isAccepted(standingOf(project, f, date)));
