import { z } from 'zod';
import { Signal } from '../model/electrical';
import { Id } from '../model/ids';
import { command } from './command';

export const signalAdd = command({
  id: 'signal.add',
  label: 'Add signal',
  args: z.strictObject({ signal: Signal.extend({ id: Id.optional() }) }),
  refuse: (project, { signal }) =>
    project.signals.some((s) => s.name === signal.name) ? `There is a signal ${signal.name} already.` : null,
  run(draft, { signal }, { newId }) {
    draft.signals.push({ ...signal, id: signal.id ?? newId() });
  },
});
