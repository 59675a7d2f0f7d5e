import { z } from 'zod';
import { command } from './command';
import { incomplete, NewDecision, nextDecisionNumber } from './shared/new-decision';

/** The same words for several findings at once, each with a record of its own. Never for what is critical. */
export const decisionAddSeveral = command({
  id: 'decision.add-several',
  label: 'Record decisions',
  args: z.strictObject({ decisions: z.array(NewDecision).min(1) }),
  refuse(project, { decisions }) {
    if (decisions.some((d) => d.basis.severity === 'critical'))
      return 'A critical finding is decided on by itself.';
    for (const decision of decisions) {
      const reason = incomplete(project, decision);
      if (reason) return reason;
    }
    return null;
  },
  run(draft, { decisions }, { newId }, project) {
    const first = nextDecisionNumber(project);
    decisions.forEach((decision, i) => {
      draft.decisions.push({ ...decision, number: `D-${first + i}`, id: decision.id ?? newId() });
    });
  },
});
