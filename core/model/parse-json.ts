import type { z } from 'zod';
import { ok, problem, type Result } from '../base/result';
import { keyTroubleIn } from './json-keys';
import { jsonStopsAt } from './json-stop';
import type { Issue, OpenProblem } from './problem';

/** Text to a JSON value, or the line and column at which it stops being JSON. */
export function parseJson(text: string): Result<unknown, OpenProblem> {
  const json = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return problem({
      code: 'not-json',
      ...placeOf(json, jsonStopsAt(json)),
      message: message.replace(/ in JSON at position.*$| \(line.*$/, ''),
    });
  }
  const trouble = keyTroubleIn(json);
  if (trouble) return problem({ code: 'bad-json', ...placeOf(json, trouble.at), message: trouble.message });
  return ok(value);
}

/** Line and column of an offset, both from 1. */
function placeOf(text: string, at: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: (before[before.length - 1] as string).length + 1 };
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
