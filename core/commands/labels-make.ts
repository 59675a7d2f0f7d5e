import { z } from 'zod';
import { byId } from '../base/by-id';
import { deriveHarness } from '../derive/derive-harness';
import { labelPlan, type LabelPlan } from '../derive/label-plan';
import { labelAroundMm, labelPartFor } from '../derive/label-room';
import { Id } from '../model/ids';
import { notNegative } from '../model/parts/common';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import type { Label } from '../model/topology';
import { command } from './command';
import { draftObject } from './shared/draft-object';
import { candidateParts, embedPart } from './shared/embed-part';

const Args = z.strictObject({
  /** Objects whose ends get labels; absent: all. */
  ids: z.array(Id).optional(),
  /** Texts that were written by hand follow the method from now on too. */
  rewrite: z.boolean().optional(),
  /** Distance that new labels get, from the end of wires and jackets. */
  atWiresMm: notNegative.optional(),
  atConnectorsMm: notNegative.optional(),
});

/** What is to be put on a label that is there. */
interface Step {
  readonly label: Label;
  readonly text: string;
  /** Absent: the part stays. */
  readonly part: Part | undefined;
}

/**
 * Labels on all ends by the method of the project, each with the smallest label part that goes round what it is on. Where no
 * diameter is known, or nothing fits, the label has no part. Labels that are right are not touched.
 */
export const labelsMake = command({
  id: 'labels.make',
  label: 'Make labels',
  args: Args,
  refuse(project, args, { catalogue }) {
    const { labelMethod } = project;
    if (!labelMethod) return 'The project does not say how ends are marked: choose the method first.';
    const { plan, steps } = stepsOf(project, labelMethod, args, candidateParts(project, catalogue));
    if (plan.add.length + steps.length > 0) return null;
    if (plan.follow.length + plan.kept.length + plan.untold.length === 0)
      return 'There is no connector, cable or wire to label.';
    return [
      plan.follow.length > 0 ? `${plan.follow.length} labels follow the method already` : null,
      plan.kept.length > 0 ? `${plan.kept.length} are written by hand and stay` : null,
      plan.untold.length > 0
        ? `${plan.untold.length} ends cannot be named: the method needs ${plan.untold[0]?.needs ?? '?'}`
        : null,
    ]
      .filter((t) => t !== null)
      .join('; ')
      .concat('.');
  },
  run(draft, args, { newId, catalogue }, project) {
    const { labelMethod } = project;
    if (!labelMethod) return;
    const candidates = candidateParts(project, catalogue);
    const { harness, plan, steps } = stepsOf(project, labelMethod, args, candidates);
    for (const { label, text, part } of steps) {
      const target = draftObject(draft, project, 'labels', label.id);
      target.text = text;
      target.made = true;
      if (part) target.part = embedPart(draft, project, part);
    }
    for (const { on, text } of plan.add) {
      const part = labelPartFor(candidates, labelAroundMm(harness, on));
      const datumDistanceMm = on.at === 'connector' ? args.atConnectorsMm : args.atWiresMm;
      draft.labels.push({
        id: newId(),
        ...(part ? { part: embedPart(draft, project, part) } : {}),
        text,
        made: true,
        ...(datumDistanceMm === undefined ? {} : { datumDistanceMm }),
        on,
      });
    }
  },
});

function stepsOf(
  project: Project,
  method: NonNullable<Project['labelMethod']>,
  { ids, rewrite }: z.output<typeof Args>,
  candidates: readonly Part[],
): { harness: ReturnType<typeof deriveHarness>; plan: LabelPlan; steps: readonly Step[] } {
  const harness = deriveHarness(project);
  const plan = labelPlan(harness, method, { ids, rewrite });
  const steps = plan.follow
    .map(({ label, text }): Step => {
      const aroundMm = labelAroundMm(harness, label.on);
      const own = byId(project.parts).get(label.part ?? '');
      const tooSmall =
        own?.kind === 'label' && aroundMm !== undefined && (own.bundleMaxMm ?? Infinity) < aroundMm;
      return { label, text, part: own && !tooSmall ? undefined : labelPartFor(candidates, aroundMm) };
    })
    .filter(({ label, text, part }) => label.text !== text || !label.made || part !== undefined);
  return { harness, plan, steps };
}
