import { draftDecision } from '@latchwork/core/decisions/draft-decision';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Decision } from '@latchwork/core/model/decision';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import type { DemoBuilder } from '../builder';

/** Names of people are invented, and say so. */
const REQUESTER = 'P. Planner (invented)';
const APPROVER = { name: 'Q. Quality (invented)', role: 'quality' } as const;
const DECIDED_ON = '2026-01-20';

/**
 * Decisions on findings, one of each standing: in force, expired, used up, and reopened since the value is another one now.
 * Their days lie so far apart that they read the same in years.
 */
export function addDecisions(demo: DemoBuilder): void {
  record(demo, 'mate-finger-room', 'X18', {
    kind: 'deviation-permit',
    reason: 'The sampler is mated once, with a tool, and stays mated.',
    mitigation: 'Card at the bench: press the latch with the blade.',
    expiresOn: '2099-12-31',
  });
  record(demo, 'length-tolerance', 'S5', {
    kind: 'deviation-permit',
    reason: 'Until the drawing is corrected; the branch is empty.',
    expiresOn: '2026-02-28',
  });
  const used = record(demo, 'mate-force', 'X16', {
    kind: 'concession',
    reason: 'Five samplers are built and are mated on a fixture.',
    items: 'samplers 1 to 5 (invented)',
    quantity: 5,
  });
  for (const [date, quantity] of [['2026-01-26', 3], ['2026-02-02', 2]] as const)
    demo.do({ id: 'decision.use', args: { decision: used, use: { date, quantity, recordedBy: 'S. Shop (invented)' } } }); // prettier-ignore
  const wire = demo.id('wires', 'W11');
  const strip = (stripLengthMm: number): void =>
    demo.do({ id: 'wire.set-strip-length', args: { id: wire, end: 0, stripLengthMm } });
  const before = demo.project.wires.find((w) => w.id === wire)?.ends[0];
  const mm = before?.at === 'cavity' ? (before.stripLengthMm ?? 4) : 4;
  strip(mm - 0.5);
  record(demo, 'strip-length', 'W11', {
    kind: 'deviation-permit',
    reason: 'The stripper is set for another contact this week.',
    expiresOn: '2099-12-31',
  });
  strip(mm);
}

/** Records a decision on the finding of a rule at an object; gives its id. */
function record(
  demo: DemoBuilder,
  rule: string,
  at: string,
  fields: Pick<Decision, 'kind' | 'reason'> & Partial<Decision>,
): string {
  const { project } = demo;
  const ids = [project.connectors, project.wires, project.segments]
    .flat()
    .filter((o) => o.designator === at)
    .map((o) => o.id);
  const { findings } = checkHarness(deriveHarness(project), RULES);
  const finding = findings.find((f) => f.rule === rule && f.objects.some((o) => ids.includes(o.id)));
  if (!finding) throw new Error(`No finding of ${rule} at ${at}`);
  const id = demo.newId();
  const decision = {
    ...draftDecision(project, finding, RULES.find((r) => r.meta.id === rule)?.meta),
    id,
    requester: REQUESTER,
    approvals: [{ ...APPROVER, date: DECIDED_ON }],
    decidedOn: DECIDED_ON,
    ...fields,
  };
  demo.do({ id: 'decision.add', args: { decision } });
  return id;
}
