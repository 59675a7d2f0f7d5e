import { z } from 'zod';
import { Decision } from '../model/decision';
import { Id } from '../model/ids';
import { command } from './command';

/** Decisions are evidence: they are added, never changed or taken away. */
export const decisionAdd = command({
  id: 'decision.add',
  label: 'Record decision',
  args: z.strictObject({ decision: Decision.extend({ id: Id.optional() }) }),
  refuse: (project, { decision }) =>
    project.decisions.some((d) => d.number === decision.number)
      ? `Decision ${decision.number} exists already.`
      : null,
  run(draft, { decision }, { newId }) {
    draft.decisions.push({ ...decision, id: decision.id ?? newId() });
  },
});
