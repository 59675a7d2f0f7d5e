import type { Project } from '../model/project';
import type { Finding } from '../rules/finding';
import { standingOf, type Standing } from './standing';

export interface StandingFinding {
  readonly finding: Finding;
  readonly standing: Standing;
}

export interface ReleaseObstacles {
  /** Critical findings that no decision covers, failed or not verifiable: while there is one, nothing is released. */
  readonly blocking: readonly StandingFinding[];
  /** Graver to lighter findings that no decision covers and that do not block. */
  readonly open: readonly StandingFinding[];
  /** Findings that go into the release by a decision on record. */
  readonly accepted: readonly StandingFinding[];
}

/** What stands between the project and its release on the day `date` (YYYY-MM-DD). */
export function releaseObstacles(
  project: Project,
  findings: readonly Finding[],
  date: string,
): ReleaseObstacles {
  const all = findings.map((finding): StandingFinding => ({
    finding,
    standing: standingOf(project, finding, date),
  }));
  const uncovered = all.filter((f) => f.standing.state !== 'accepted');
  return {
    blocking: uncovered.filter((f) => f.finding.severity === 'critical'),
    open: uncovered.filter((f) => f.finding.severity !== 'critical'),
    accepted: all.filter((f) => f.standing.state === 'accepted'),
  };
}
