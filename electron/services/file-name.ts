import { type Result, ok, problem } from '@latchwork/core/base/result';

// Reserved by Windows whatever the ending; a project must be able to travel.
const reserved = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\..*)?$/i;
// Marks of direction too: they show a name the wrong way round, ending included.
const forbidden = /[\u0000-\u001f\u007f\u200e\u200f\u202a-\u202e\u2066-\u2069/\\:*?"<>|]/;

/** A bare file name that is valid on every system, or the reason why not. Never a path: nothing can be climbed out of. */
export function bareFileName(name: string): Result<string, string> {
  if (name.trim() === '') return problem('The name is empty.');
  if (name !== name.trim()) return problem('The name starts or ends with a space.');
  if (forbidden.test(name))
    return problem('A name cannot contain / \\ : * ? " < > | or control characters or marks of direction.');
  if (name.startsWith('.')) return problem('A name cannot start with a dot.');
  if (name.endsWith('.')) return problem('A name cannot end with a dot.');
  if (reserved.test(name)) return problem('This name is reserved by some systems.');
  if (Buffer.byteLength(name, 'utf8') > 200) return problem('The name is too long.');
  return ok(name);
}

export const withEnding = (name: string, ending: string): string =>
  name.toLowerCase().endsWith(ending) ? name : name + ending;

/** The nearest valid name to a suggestion: what cannot stand in a name becomes a hyphen. */
export function nearestFileName(suggestion: string, fallback: string): string {
  const cleaned = suggestion
    .replace(new RegExp(`${forbidden.source}+`, 'g'), '-')
    .replace(/^[.\s]+|[.\s]+$/g, '');
  return bareFileName(cleaned).ok ? cleaned : fallback;
}
