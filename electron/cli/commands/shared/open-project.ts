import { type Result, ok, problem } from '@latchwork/core/base/result';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { parseProject } from '@latchwork/core/model/parse';
import { openProblemText } from '@latchwork/core/model/problem';
import { type Project } from '@latchwork/core/model/project';
import { type CheckOptions, type CheckResult, checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { readProjectFile } from '../../../services/project-file';

/** The project in a file, or a reason that names the file. */
export async function openProject(path: string): Promise<Result<Project, string>> {
  const file = await readProjectFile(path);
  if (!file.ok) return problem(`${path}: ${file.problem}`);
  const project = parseProject(file.value.text);
  return project.ok ? ok(project.value) : problem(`${path}: ${openProblemText(project.problem)}`);
}

/** All findings of a project; the result carries the harness. */
export const checkProject = (project: Project, options?: CheckOptions): CheckResult =>
  checkHarness(deriveHarness(project), RULES, undefined, options);
