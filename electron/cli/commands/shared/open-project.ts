import { type Result, ok, problem } from '@latchwork/core/base/result';
import { checkAlternates, withAlternates } from '@latchwork/core/decisions/check-alternates';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { type Part } from '@latchwork/core/model/parts/part';
import { parseProject } from '@latchwork/core/model/parse';
import { openProblemText } from '@latchwork/core/model/problem';
import { type Project } from '@latchwork/core/model/project';
import { type CheckResult, checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { readProjectFile } from '../../../services/project-file';

/** The project in a file, or a reason that names the file. */
export async function openProject(path: string): Promise<Result<Project, string>> {
  const file = await readProjectFile(path);
  if (!file.ok) return problem(`${path}: ${file.problem}`);
  const project = parseProject(file.value.text);
  return project.ok ? ok(project.value) : problem(`${path}: ${openProblemText(project.problem)}`);
}

/** All findings of a project, the alternates on record tried in the place of their parts; the result carries the harness. */
export function checkProject(project: Project, catalogue: readonly Part[] = []): CheckResult {
  const check = checkHarness(deriveHarness(project), RULES, undefined, { catalogue });
  return withAlternates(check, checkAlternates(check, catalogue));
}
