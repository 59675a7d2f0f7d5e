import { z } from 'zod';
import { Revision } from '../model/title-block';
import { command } from './command';

/** The next revision, as a draft. After a release it goes on from what was released. */
export const projectAddRevision = command({
  id: 'project.add-revision',
  label: 'Add revision',
  args: z.strictObject({ revision: Revision.omit({ id: true, status: true, baseline: true }) }),
  refuse: (project, { revision }) =>
    project.revisions.some((r) => r.revision === revision.revision)
      ? `Revision ${revision.revision} exists already.`
      : null,
  run(draft, { revision }, { newId }, project) {
    if (project.revisions.at(-1)?.status === 'released') {
      // Both were said of what was released.
      delete draft.titleBlock.dateOfIssue;
      delete draft.titleBlock.approvalPerson;
    }
    draft.revisions.push({ id: newId(), ...revision, status: 'draft' });
  },
});
