import { releaseObstacles } from '../../decisions/release-obstacles';
import type { Project } from '../../model/project';
import type { CheckResult } from '../../rules/check-harness';
import { SEVERITIES, type Finding } from '../../rules/finding';

/** How much was asked and what came of it, so that an empty list is not taken for an unasked one. */
export function reportSummary(project: Project, check: CheckResult, date: string): [string, string][] {
  const count = (severity: string, result: Finding['result']): number =>
    check.findings.filter((f) => f.severity === severity && f.result === result).length;
  const tally = [...check.tally().values()];
  const passed = tally.reduce((n, t) => n + t.pass, 0);
  return [
    ['Checks passed', `${passed} by ${tally.length} rules`],
    ...SEVERITIES.map((s): [string, string] => [
      `Findings, ${s}`,
      `${count(s, 'fail')} fail, ${count(s, 'cannot-verify')} cannot verify`,
    ]),
    ...standingLines(project, check.findings, date),
  ];
}

function standingLines(project: Project, findings: readonly Finding[], date: string): [string, string][] {
  const { blocking, open, accepted } = releaseObstacles(project, findings, date);
  return [
    ['Decisions judged on', date],
    ['Accepted on record', `${accepted.length} of ${findings.length} findings`],
    [
      'Release',
      blocking.length > 0
        ? `blocked by ${blocking.length} critical findings that are open`
        : `no critical finding is open; ${open.length} other open`,
    ],
  ];
}
