import { compareNatural, compareText } from '../../base/stable-order';
import { standingOf, type Standing } from '../../decisions/standing';
import type { Decision } from '../../model/decision';
import type { Project } from '../../model/project';
import { SEVERITIES, type Finding } from '../../rules/finding';
import { RULES } from '../../rules/index';
import { refText } from '../../rules/refs';
import type { RuleMeta } from '../../rules/rule';
import { messageOf } from './finding-words';

/** A finding with what is needed to tell it. */
export interface ToldFinding {
  readonly finding: Finding;
  readonly meta: RuleMeta | undefined;
  /** Its objects in the words of the drawing: "X1:3, W2". */
  readonly where: string;
  readonly message: string;
  readonly decisions: readonly Decision[];
  readonly standing: Standing;
}

/**
 * Findings in the order in which they are told: gravest first, then by rule, then by object. Decisions are judged on
 * the day `date` (YYYY-MM-DD).
 */
export function toldFindings(
  project: Project,
  findings: readonly Finding[],
  date: string,
): readonly ToldFinding[] {
  const metas = new Map(RULES.map((r) => [r.meta.id, r.meta]));
  const decisions = new Map<string, Decision[]>();
  for (const d of project.decisions) decisions.set(d.finding, [...(decisions.get(d.finding) ?? []), d]);
  return findings
    .map((finding): ToldFinding => {
      const meta = metas.get(finding.rule);
      return {
        finding,
        meta,
        where: finding.objects.map((o) => refText(project, o)).join(', '),
        message: messageOf(finding, meta),
        decisions: decisions.get(finding.key) ?? [],
        standing: standingOf(project, finding, date),
      };
    })
    .sort(
      (a, b) =>
        SEVERITIES.indexOf(a.finding.severity) - SEVERITIES.indexOf(b.finding.severity) ||
        compareText(a.finding.rule, b.finding.rule) ||
        compareNatural(a.where, b.where) ||
        compareText(a.finding.key, b.finding.key),
    );
}
