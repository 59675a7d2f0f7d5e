import { compareFindings, type FindingChanges } from '@latchwork/core/decisions/compare-findings';
import { rawCheckOf } from '@latchwork/core/decisions/raw-check';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { LimitSet } from '@latchwork/core/model/limit-set';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';

/** Which findings would go, come and change by another limit set; the project itself stays as it is. */
export function previewLimitSet(check: CheckResult, limitSet: LimitSet): FindingChanges {
  const raw = rawCheckOf(check);
  const { harness, findings } = raw;
  const project = { ...harness.project, limitSet };
  const after = checkHarness(deriveHarness(project, harness), RULES, raw);
  return compareFindings({ project: harness.project, findings }, { project, findings: after.findings });
}
