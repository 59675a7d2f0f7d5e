import { z } from 'zod';
import { command } from './command';
import { incomplete, NewDecision, nextDecisionNumber } from './shared/new-decision';

/** Records are evidence: they are added, never changed or taken away. */
export const decisionAdd = command({
  id: 'decision.add',
  label: 'Record decision',
  args: z.strictObject({ decision: NewDecision }),
  refuse: (project, { decision }) => incomplete(project, decision),
  run(draft, { decision }, { newId }, project) {
    const number = `D-${nextDecisionNumber(project)}`;
    draft.decisions.push({ ...decision, number, id: decision.id ?? newId() });
  },
});
