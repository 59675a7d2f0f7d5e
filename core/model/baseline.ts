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
  const then = asReleased(project);
  if (then === null) return 'altered';
  const same = serialiseProject(then) === serialiseProject(project);
  return same ? 'as-released' : 'decided-since';
}

/**
 * The released project as it was released, without the decisions that were recorded since: the text of it without its own
 * baseline has the baseline hash. Null where there is no such state: it is a draft, or was changed outside of the program.
 */
export function asReleased(project: Project): Project | null {
  const current = project.revisions.at(-1);
  if (current?.status !== 'released') return null;
  // Records are only ever added: some number of the first ones was there.
  for (let n = project.decisions.length; n >= 0; n--) {
    const first = project.decisions.slice(0, n);
    const tried = [first, first.map(withoutLaterUse)].map((decisions) => ({ ...project, decisions }));
    const then = tried.find((t) => sha256(serialiseProject(withoutOwnBaseline(t))) === current.baseline);
    if (then) return then;
  }
  return null;

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
