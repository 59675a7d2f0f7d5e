import { z } from 'zod';
import { Limit } from '../model/limit-set';
import { command } from './command';

export const projectSetLimit = command({
  id: 'project.set-limit',
  label: 'Change limit',
  args: z.strictObject({ limit: Limit }),
  refuse: () => null,
  run(draft, { limit }) {
    const at = draft.limitSet.limits.findIndex((l) => l.id === limit.id);
    if (at < 0) draft.limitSet.limits.push(limit);
    else draft.limitSet.limits[at] = limit;
  },
});
