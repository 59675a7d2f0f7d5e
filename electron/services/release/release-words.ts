import type { StandingFinding } from '@latchwork/core/decisions/release-obstacles';
import { messageOf, RESULT_WORDS } from '@latchwork/core/exports/findings/finding-words';
import type { Project } from '@latchwork/core/model/project';
import { RULES } from '@latchwork/core/rules/index';
import { refText } from '@latchwork/core/rules/refs';

/** "X1:3 [contact-kind], failed: …": one finding that keeps a release from being made. */
export function obstacleText(project: Project, { finding }: StandingFinding): string {
  const meta = RULES.find((r) => r.meta.id === finding.rule)?.meta;
  const where = finding.objects.map((o) => refText(project, o)).join(', ');
  return `${where} [${finding.rule}], ${RESULT_WORDS[finding.result]}: ${messageOf(finding, meta)}`;
}
