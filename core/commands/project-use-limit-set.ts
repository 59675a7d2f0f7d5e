import { z } from 'zod';
import { LimitSet } from '../model/limit-set';
import { command } from './command';

/** The whole set is replaced: values that were typed in the project go with it. */
export const projectUseLimitSet = command({
  id: 'project.use-limit-set',
  label: 'Use limit set',
  args: z.strictObject({ limitSet: LimitSet }),
  refuse: (_project, { limitSet: { limits } }) => {
    const twice = limits.find((l, i) => limits.findIndex((x) => x.id === l.id) !== i);
    return twice ? `The limit ${twice.id} stands twice in this set.` : null;
  },
  run(draft, { limitSet }) {
    draft.limitSet = limitSet;
  },
});
