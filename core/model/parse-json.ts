import type { z } from 'zod';
import { ok, problem, type Result } from '../base/result';
import type { Issue, OpenProblem } from './problem';

/** Text to a JSON value, or the line and column at which it stops being JSON. */
export function parseJson(text: string): Result<unknown, OpenProblem> {
  try {
    return ok(JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text));
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const at = /position (\d+)/.exec(message);
    const offset = at ? Number(at[1]) : text.length;
    const before = text.slice(0, offset).split('\n');
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
