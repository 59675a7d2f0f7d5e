import { dispatchUnknown } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { compareFindings, type FindingChanges } from '@latchwork/core/decisions/compare-findings';
import { rawCheckOf } from '@latchwork/core/decisions/raw-check';
import { changeHeading, fieldChangeText } from '@latchwork/core/derive/change-words';
import { changesOf } from '@latchwork/core/derive/changes-of';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Part } from '@latchwork/core/model/parts/part';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import type { Fix } from '@latchwork/core/rules/finding';
import { RULES } from '@latchwork/core/rules/index';

export interface FixPreview {
  /** Why the fix cannot be done now, else null. */
  readonly refused: string | null;
  readonly objects: readonly { readonly heading: string; readonly fields: readonly string[] }[];
  readonly findings: FindingChanges;
}

const NONE: FindingChanges = { gone: [], added: [], changed: [] };

/** What a fix would change, tried on a copy: the project itself stays as it is. */
export function previewFix(check: CheckResult, fix: Fix, catalogue: readonly Part[]): FixPreview {
  const before = check.harness.project;
  const tried = dispatchUnknown(
    startHistory(before),
    { id: fix.command, args: fix.args },
    { newId: () => crypto.randomUUID(), catalogue },
  );
  if (!tried.ok) return { refused: tried.problem.reason, objects: [], findings: NONE };
  const after = tried.value.project;
  const raw = rawCheckOf(check);
  const checked = checkHarness(deriveHarness(after, raw.harness), RULES, raw);
  return {
    refused: null,
    objects: changesOf(before, after).map((c) => ({
      heading: changeHeading(before, after, c),
      fields: c.fields.map((f) => fieldChangeText(before, after, f)),
    })),
    findings: compareFindings(
      { project: before, findings: raw.findings },
      { project: after, findings: checked.findings },
    ),
  };
}
