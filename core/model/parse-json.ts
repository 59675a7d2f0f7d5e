import type { z } from 'zod';
import { ok, problem, type Result } from '../base/result';
import { jsonStopsAt } from './json-stop';
import type { Issue, OpenProblem } from './problem';

/** Text to a JSON value, or the line and column at which it stops being JSON. */
export function parseJson(text: string): Result<unknown, OpenProblem> {
  const json = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  try {
    return ok(JSON.parse(json));
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const before = json.slice(0, jsonStopsAt(json)).split('\n');
    return problem({
      code: 'not-json',
      line: before.length,
      column: (before[before.length - 1] as string).length + 1,
      message: message.replace(/ in JSON at position.*$| \(line.*$/, ''),
    });
  }
}

/** The path of a zod issue as people write it: wires[3].ends[0].cavity */
export function issuesOf(error: z.ZodError): Issue[] {
  return error.issues.map((issue) => ({ path: pathText(issue.path), message: issue.message }));
}

function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const step of path) text += typeof step === 'number' ? `[${step}]` : (text ? '.' : '') + String(step);
  return text || '(whole file)';
}
