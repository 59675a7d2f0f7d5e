import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';

/** A demo project as it lies in the tree. */
export function demoProject(name: string): Project {
  const project = parseProject(readFileSync(join('demo-projects', `${name}.latchwork`), 'utf8'));
  if (!project.ok) throw new Error(name);
  return project.value;
}

/** The project with its current revision released on the first of March 2026. */
export function released(project: Project): Project {
  const done = dispatch(
    startHistory(project),
    { id: 'project.release', args: { date: '2026-03-01' } },
    { newId: () => crypto.randomUUID(), catalogue: [] },
  );
  if (!done.ok) throw new Error(done.problem.reason);
  return done.value.project;
}
