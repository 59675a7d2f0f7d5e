import { problem, ok, type Result } from '../../base/result';
import type { Id } from '../ids';
import { MIGRATIONS } from '../migrations/index';
import { newProject } from '../new-project';
import { issuesOf } from '../parse-json';
import { COLLECTIONS, Project, PROJECT_FORMAT, PROJECT_FORMAT_VERSION } from '../project';
import { mendReferences } from './mend-references';
import { readLines } from './read-lines';

export interface Rescued {
  readonly project: Project;
  /** What is not in it, each with its place and the reason. */
  readonly lost: readonly string[];
}

type Raw = Record<string, unknown>;

/**
 * What can be read of a file that does not open, as a project of its own. Everything that is left out is named; nothing
 * is made up but what a project cannot be without. The result is for the user to look through: it never replaces the file.
 */
export function rescueProject(text: string, ids: { id: Id; revisionId: Id }): Result<Rescued, string> {
  const lost: string[] = [];
  const raw = readWhatIsThere(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text, lost);
  if (raw['format'] !== undefined && raw['format'] !== PROJECT_FORMAT)
    return problem('This is a file of another kind: there is nothing in it to rescue.');
  const version = raw['formatVersion'];
  if (typeof version === 'number' && version > PROJECT_FORMAT_VERSION)
    return problem(
      'The file was written by a newer program. Update the program to open it; it is not damaged.',
    );
  for (const step of MIGRATIONS) if (typeof version === 'number' && version < step.to) migrate(raw, step.up);
  const blank = newProject({ ...ids, title: 'Rescued harness' });
  const project = { ...blank, ...ownFields(raw, lost), ...lists(raw, lost) };
  const found = COLLECTIONS.reduce((sum, c) => sum + project[c].length, 0);
  if (found === 0) return problem('Nothing in this file can be read as part of a harness.');
  return ok({ project: mendReferences(project, lost), lost });
}

function readWhatIsThere(text: string, lost: string[]): Raw {
  try {
    const value: unknown = JSON.parse(text);
    if (isRaw(value)) return value;
  } catch {
    // Line by line, then.
  }
  const { fields, lists: found, unread } = readLines(text);
  if (unread.length > 0)
    lost.push(`${unread.length === 1 ? 'line' : 'lines'} ${unread.slice(0, 20).join(', ')}${unread.length > 20 ? ' …' : ''}: not readable`); // prettier-ignore
  for (const name of ['titleBlock', ...COLLECTIONS])
    if (!found.has(name) && !(name in fields)) lost.push(`${name}: not in the file any more`);
  return { ...fields, ...Object.fromEntries(found) };
}

/** A step for a whole file must not stop at one that is not. Where it does, the objects are tried as they are. */
function migrate(raw: Raw, up: (raw: Raw) => void): void {
  try {
    up(raw);
  } catch {
    // What does not fit is left out below, and named.
  }
}

function ownFields(raw: Raw, lost: string[]): Partial<Project> {
  const out: Raw = {};
  const isList = new Set<string>(COLLECTIONS);
  for (const [key, schema] of Object.entries(Project.shape)) {
    if (isList.has(key) || key === 'format' || key === 'formatVersion' || raw[key] === undefined) continue;
    const parsed = schema.safeParse(raw[key]);
    if (parsed.success) out[key] = parsed.data;
    else lost.push(`${key}: ${issuesOf(parsed.error).map((i) => `${i.path}: ${i.message}`).join('; ')}`); // prettier-ignore
  }
  return out as Partial<Project>;
}

function lists(raw: Raw, lost: string[]): Partial<Project> {
  return Object.fromEntries(
    COLLECTIONS.map((name) => {
      const schema = Project.shape[name].element;
      const seen = new Set<string>();
      const list = raw[name];
      if (!Array.isArray(list)) {
        if (list !== undefined) lost.push(`${name}: not a list`);
        return [name, []];
      }
      const kept = list.flatMap((item: unknown, i): unknown[] => {
        const parsed = schema.safeParse(item);
        if (!parsed.success) {
          lost.push(`${name}[${i}]${nameIn(item)}: ${issuesOf(parsed.error).map((x) => `${x.path}: ${x.message}`).join('; ')}`); // prettier-ignore
          return [];
        }
        if (seen.has(parsed.data.id)) {
          lost.push(`${name}[${i}]${nameIn(item)}: its id is used by another`);
          return [];
        }
        seen.add(parsed.data.id);
        return [parsed.data];
      });
      return [name, kept];
    }),
  ) as Partial<Project>;
}

function nameIn(item: unknown): string {
  const name = isRaw(item) ? (item['designator'] ?? item['partNumber'] ?? item['name']) : undefined;
  return typeof name === 'string' ? ` (${name})` : '';
}

const isRaw = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
