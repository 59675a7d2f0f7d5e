import { z } from 'zod';
import { sha256 } from '../base/sha256';
import type { Project } from '../model/project';
import { serialiseProject } from '../model/serialise';
import { command } from './command';

/**
 * Releases the current revision: from now on nothing but decisions can be recorded on it, and the next revision starts
 * from it. Whether findings stand against it is for who asks to know (core/decisions/release-obstacles.ts).
 */
export const projectRelease = command({
  id: 'project.release',
  label: 'Release revision',
  args: z.strictObject({ date: z.iso.date(), approvalPerson: z.string().min(1).optional() }),
  refuse(project) {
    const current = project.revisions.at(-1);
    if (!current) return 'There is no revision to release. Add one first.';
    if (current.status === 'released') return `Revision ${current.revision} is released already.`;
    return project.titleBlock.identificationNumber === ''
      ? 'The title block has no identification number: papers of a release could not be told apart.'
      : null;
  },
  run(draft, { date, approvalPerson }, _context, project) {
    const released = releasedOn(project, date, approvalPerson);
    draft.titleBlock = released.titleBlock;
    draft.revisions = released.revisions;
  },
});

function releasedOn(project: Project, date: string, approvalPerson: string | undefined): Project {
  const current = project.revisions.at(-1) as Project['revisions'][number];
  const { baseline: _, ...rest } = { ...current, status: 'released' as const, date };
  const before = project.revisions.slice(0, -1);
  const plain: Project = {
    ...project,
    titleBlock: { ...project.titleBlock, dateOfIssue: date, ...(approvalPerson ? { approvalPerson } : {}) },
    revisions: [...before, rest],
  };
  return { ...plain, revisions: [...before, { ...rest, baseline: sha256(serialiseProject(plain)) }] };
}
