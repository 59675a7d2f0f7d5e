import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';

const newId = countingIds(70_000_000);

export const tried = (project: Project, call: Call) =>
  dispatch(startHistory(project), call, { newId, catalogue: [] });

/** The project after a command that must succeed. */
export function after(project: Project, call: Call): Project {
  const result = tried(project, call);
  if (!result.ok) throw new Error(result.problem.reason);
  return result.value.project;
}

/** Why a command is refused; "done" where it is not. */
export function refusal(project: Project, call: Call): string {
  const result = tried(project, call);
  return result.ok ? 'done' : result.problem.reason;
}
