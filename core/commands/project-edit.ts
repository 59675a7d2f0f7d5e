import { z } from 'zod';
import { Project } from '../model/project';
import { command } from './command';
import { applyChange } from './shared/draft-object';

export const projectEdit = command({
  id: 'project.edit',
  label: 'Edit project',
  args: z.strictObject({
    change: Project.pick({ notes: true, regulated: true, buildQuantities: true }).partial(),
  }),
  refuse: () => null,
  run(draft, { change }) {
    applyChange(draft, change);
  },
});
