import { z } from 'zod';
import { Project } from '../model/project';
import { command } from './command';
import { applyChange } from './shared/draft-object';

export const projectEdit = command({
  id: 'project.edit',
  label: 'Edit project',
  args: z.strictObject({
    change: z.strictObject({
      ...Project.pick({ notes: true, regulated: true, buildQuantities: true }).partial().shape,
      labelMethod: Project.shape.labelMethod.nullable(),
    }),
  }),
  refuse: () => null,
  run(draft, { change }) {
    applyChange(draft, change);
  },
});
