import type { Project } from '../../model/project';
import { cautionsOf, SHOP_CAUTIONS } from '../cautions';

/** What every part of a release says of itself. */
export interface ReleaseFacts {
  readonly title: string;
  readonly identificationNumber: string;
  readonly revision: string;
  readonly baseline: string;
  readonly limitSet: string;
  /** The day of the release, YYYY-MM-DD. */
  readonly date: string;
  readonly cautions: readonly string[];
}

/** The facts of a released project; null where its current revision is not released, or bears no hash or day. */
export function releaseFacts(project: Project): ReleaseFacts | null {
  const current = project.revisions.at(-1);
  if (current?.status !== 'released' || current.baseline === undefined || current.date === undefined)
    return null;
  const { title, identificationNumber } = project.titleBlock;
  return {
    title,
    identificationNumber,
    revision: current.revision,
    baseline: current.baseline,
    limitSet: `${project.limitSet.name}, revision ${project.limitSet.revision}`,
    date: current.date,
    cautions: [...cautionsOf(project), ...SHOP_CAUTIONS],
  };
}
