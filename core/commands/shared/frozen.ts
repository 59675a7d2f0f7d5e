import type { Project } from '../../model/project';

/** What may be done to a released revision: record decisions on it, start the next one, put states of it together. */
const ALLOWED: ReadonlySet<string> = new Set([
  'decision.add',
  'decision.add-several',
  'decision.use',
  'decision.close',
  'project.add-revision',
  'project.take',
]);

/** Why a command cannot be carried out on this revision, or null. */
export function frozenReason(project: Project, command: string): string | null {
  const current = project.revisions.at(-1);
  if (current?.status !== 'released' || ALLOWED.has(command)) return null;
  // A refusal of its own says it better.
  if (command === 'project.release') return null;
  return `Revision ${current.revision} is released and frozen. Add a revision to go on from it.`;
}
