import { ok, problem, type Result } from '../base/result';
import { MIGRATIONS } from './migrations/index';
import { issuesOf, parseJson } from './parse-json';
import type { OpenProblem } from './problem';
import { Project, PROJECT_FORMAT, PROJECT_FORMAT_VERSION } from './project';
import { referenceIssues } from './references';

/**
 * Text of a `.latchwork` file to a project. Older versions are migrated, newer ones refused; nothing is repaired
 * and nothing is guessed: whatever does not fit is a named problem with its place.
 */
export function parseProject(text: string): Result<Project, OpenProblem> {
  const json = parseJson(text);
  if (!json.ok) return json;
  const raw = json.value;
  if (!isObject(raw) || raw['format'] !== PROJECT_FORMAT)
    return problem({
      code: 'not-ours',
      expected: PROJECT_FORMAT,
      found: isObject(raw) ? (JSON.stringify(raw['format']) ?? 'nothing') : 'no object',
    });
  const version = raw['formatVersion'];
  if (typeof version === 'number' && version > PROJECT_FORMAT_VERSION)
    return problem({ code: 'too-new', found: version, known: PROJECT_FORMAT_VERSION });
  migrate(raw);
  const parsed = Project.safeParse(raw);
  if (!parsed.success) return problem({ code: 'bad-shape', issues: issuesOf(parsed.error) });
  const issues = referenceIssues(parsed.data);
  return issues.length ? problem({ code: 'broken-reference', issues }) : ok(parsed.data);
}

function migrate(raw: Record<string, unknown>): void {
  for (const step of MIGRATIONS) {
    if (typeof raw['formatVersion'] === 'number' && raw['formatVersion'] === step.to - 1) {
      step.up(raw);
      raw['formatVersion'] = step.to;
    }
  }
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
