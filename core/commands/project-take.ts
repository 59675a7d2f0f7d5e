import { z } from 'zod';
import { COLLECTIONS, Project } from '../model/project';
import { referenceIssues } from '../model/references';
import { command } from './command';

/** Another state of the same project in place of this one: what a merge with the file on disk came to. */
export const projectTake = command({
  id: 'project.take',
  label: 'Merge',
  args: z.strictObject({ project: Project }),
  refuse(now, { project }) {
    if (project.id !== now.id) return 'This is another project, not another state of this one.';
    const issue = referenceIssues(project)[0];
    if (issue) return `${issue.path}: ${issue.message}`;
    const kept = new Set(project.decisions.map((d) => d.id));
    const gone = now.decisions.find((d) => !kept.has(d.id));
    return gone ? `Decision ${gone.number} is a record and stays.` : null;
  },
  run(draft, { project }, _context, now) {
    for (const key of Object.keys(Project.shape) as (keyof Project)[]) {
      if (JSON.stringify(project[key]) === JSON.stringify(now[key])) continue;
      if (project[key] === undefined) {
        delete (draft as Partial<Project>)[key];
        continue;
      }
      const list = COLLECTIONS.find((c) => c === key);
      Object.assign(draft, { [key]: list ? keptObjects(now[list], project[list]) : project[key] });
    }
  },
});

type WithId = { readonly id: string };

/** Objects that say the same stay the ones they were, so that nothing is derived anew for them. */
function keptObjects(now: readonly WithId[], then: readonly WithId[]): readonly WithId[] {
  const known = new Map(now.map((o) => [o.id, o]));
  return then.map((o) => {
    const was = known.get(o.id);
    return was && JSON.stringify(was) === JSON.stringify(o) ? was : o;
  });
}
