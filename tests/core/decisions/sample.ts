import { draftDecision } from '@latchwork/core/decisions/draft-decision';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Decision } from '@latchwork/core/model/decision';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import type { Finding } from '@latchwork/core/rules/finding';
import { RULES } from '@latchwork/core/rules/index';

export const findingsOf = (project: Project): readonly Finding[] =>
  checkHarness(deriveHarness(project), RULES).findings;

/** A strip length outside its tolerance: a finding with a measured value and a limit, at a cavity. */
export const faulty = (change: (t: TinyDraft) => void = () => {}): Project =>
  tiny((t) => {
    t.wire('W1').ends[0].stripLengthMm = 9;
    change(t);
  });

export function theFinding(project: Project, rule = 'strip-length'): Finding {
  const found = findingsOf(project).find((f) => f.rule === rule);
  if (!found) throw new Error(`${rule} says nothing: ${findingsOf(project).map((f) => f.rule).join(', ')}`); // prettier-ignore
  return found;
}

/** A complete permit on a finding: from 2026-02-01 until 2026-06-30. */
export const permitOn = (project: Project, finding: Finding, change: Partial<Decision> = {}): Decision => ({
  ...draftDecision(project, finding, RULES.find((r) => r.meta.id === finding.rule)?.meta),
  id: '00000000-0000-4000-8000-0000000d0001',
  number: 'D-1',
  kind: 'deviation-permit',
  reason: 'No time',
  requester: 'R. Quester',
  approvals: [{ name: 'A. Prover', role: 'quality', date: '2026-02-01' }],
  decidedOn: '2026-02-01',
  expiresOn: '2026-06-30',
  ...change,
});

export const withDecisions = (project: Project, ...decisions: readonly Decision[]): Project => ({
  ...project,
  decisions: [...project.decisions, ...decisions],
});
