import { memoByIdentity } from '../base/memo-by-identity';
import { sha256 } from '../base/sha256';
import type { Project } from './project';
import { serialiseProject } from './serialise';

/**
 * The baseline hash: SHA-256 of the project as it is written to a file. Documents that bear the same hash were made from
 * the same project to the byte. A released revision keeps the hash that it was released with, whatever is recorded on it
 * afterwards.
 */
export const baselineOf: (project: Project) => string = memoByIdentity((project) => {
  const current = project.revisions.at(-1);
  return current?.status === 'released' && current.baseline !== undefined
    ? current.baseline
    : sha256(serialiseProject(project));
});

/** The project whose text has the baseline hash: the current revision cannot hold the hash of itself. */
export function withoutOwnBaseline(project: Project): Project {
  const current = project.revisions.at(-1);
  if (current?.baseline === undefined) return project;
  const { baseline: _, ...rest } = current;
  return { ...project, revisions: [...project.revisions.slice(0, -1), rest] };
}

export type ReleaseState =
  | 'draft'
  /** To the byte what was released. */
  | 'as-released'
  /** What was released, and decisions that were recorded since. */
  | 'decided-since'
  /** Says that it is released and is not what was: changed outside of the program. */
  | 'altered';

/** Whether a project is what its current revision was released as. */
export function releaseStateOf(project: Project): ReleaseState {
  const current = project.revisions.at(-1);
  if (current?.status !== 'released') return 'draft';
  const plain = withoutOwnBaseline(project);
  if (sha256(serialiseProject(plain)) === current.baseline) return 'as-released';
  // Records are only ever added: some number of the first ones was there.
  for (let n = plain.decisions.length; n >= 0; n--) {
    const then = { ...plain, decisions: plain.decisions.slice(0, n).map(withoutLaterUse) };
    if (sha256(serialiseProject(then)) === current.baseline) return 'decided-since';
  }
  return 'altered';

  function withoutLaterUse(decision: Project['decisions'][number]): Project['decisions'][number] {
    const day = current?.date;
    const { uses, closed, ...rest } = decision;
    const before = uses?.filter((u) => day === undefined || u.date <= day);
    return {
      ...rest,
      ...(before?.length ? { uses: before } : {}),
      ...(closed && (day === undefined || closed.date <= day) ? { closed } : {}),
    };
  }
}
