import { type Result, problem } from '@latchwork/core/base/result';
import { type Project } from '@latchwork/core/model/project';
import { projectOfText } from '../../../services/check-project';
import { readProjectFile } from '../../../services/project-file';

/** The project in a file, or a reason that names the file. */
export async function openProject(path: string): Promise<Result<Project, string>> {
  const file = await readProjectFile(path);
  if (!file.ok) return problem(`${path}: ${file.problem}`);
  const project = projectOfText(file.value.text);
  return project.ok ? project : problem(`${path}: ${project.problem}`);
}
