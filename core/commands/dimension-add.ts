import { z } from 'zod';
import { Id } from '../model/ids';
import { Dimension } from '../model/topology';
import { command } from './command';
import { noDatums } from './shared/datums';

/** A dimension along the harness from datum to datum. Its values are measured, never stored. */
export const dimensionAdd = command({
  id: 'dimension.add',
  label: 'Add dimension',
  args: z.strictObject({ ...Dimension.shape, id: Id.optional() }),
  refuse: (project, { datums }) => noDatums(project, datums),
  run(draft, { id, ...rest }, { newId }) {
    draft.dimensions.push({ id: id ?? newId(), ...rest });
  },
});
