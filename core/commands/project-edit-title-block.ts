import { z } from 'zod';
import { TitleBlock } from '../model/title-block';
import { command } from './command';
import { applyChange } from './shared/draft-object';

export const projectEditTitleBlock = command({
  id: 'project.edit-title-block',
  label: 'Edit title block',
  args: z.strictObject({ change: TitleBlock.partial() }),
  refuse: () => null,
  run(draft, { change }) {
    applyChange(draft.titleBlock, change);
  },
});
