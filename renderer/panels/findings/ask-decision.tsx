import type { Decision } from '@latchwork/core/model/decision';
import type { Finding } from '@latchwork/core/rules/finding';
import { ask } from '../../ui/dialogs';
import { say } from '../../ui/toasts';
import { appStore } from '../../app/store';
import { CloseForm, UseForm } from './decision-later';
import { DecisionForm } from './decision-form';

/** Asks for a decision on a finding and records it. */
export async function recordDecision(finding: Finding): Promise<void> {
  const before = appStore.getState().history.project.decisions.length;
  const recorded = await ask<boolean>((done) => <DecisionForm finding={finding} done={done} />, {
    wide: true,
  });
  const added = appStore.getState().history.project.decisions.slice(before);
  if (recorded) say('done', `On record: ${added.map((d) => d.number).join(', ')}.`);
}

export const recordUse = (decision: Decision): Promise<boolean | null> =>
  ask<boolean>((done) => <UseForm decision={decision} done={done} />);

export const recordClosing = (decision: Decision): Promise<boolean | null> =>
  ask<boolean>((done) => <CloseForm decision={decision} done={done} />);
