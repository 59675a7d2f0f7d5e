import { type Result, ok, problem } from '@latchwork/core/base/result';
import { checkAlternates, withAlternates } from '@latchwork/core/decisions/check-alternates';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Part } from '@latchwork/core/model/parts/part';
import { parseProject } from '@latchwork/core/model/parse';
import { openProblemText } from '@latchwork/core/model/problem';
import type { Project } from '@latchwork/core/model/project';
import { type CheckResult, checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';

/** All findings of a project, the alternates on record tried in the place of their parts; the result carries the harness. */
export function checkProject(project: Project, catalogue: readonly Part[] = []): CheckResult {
  const check = checkHarness(deriveHarness(project), RULES, undefined, { catalogue });
  return withAlternates(check, checkAlternates(check, catalogue));
}

/** The project of a text, or what is wrong with it in words. */
export function projectOfText(text: string): Result<Project, string> {
  const project = parseProject(text);
  return project.ok ? ok(project.value) : problem(openProblemText(project.problem));
}
