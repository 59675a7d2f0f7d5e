import type { z } from 'zod';
import { COLLECTIONS, type Collection, Project } from '../project';
import { referenceIssues } from '../references';

type Holder = Record<string, unknown>;

/**
 * Takes names of objects that are gone out of those that stay; an object that cannot be without the name goes too. Each
 * step is named in `lost`. Ends, for each round takes something away.
 */
export function mendReferences(project: Project, lost: string[]): Project {
  let now = structuredCopy(project);
  for (;;) {
    const issues = referenceIssues(now);
    if (issues.length === 0) return now;
    const drop = new Map<Collection, Set<number>>();
    for (const { path, message } of issues) {
      const steps = path.split(/[.[\]]+/).filter(Boolean);
      const collection = COLLECTIONS.find((c) => c === steps[0]);
      if (!collection) {
        now = Project.parse(mended(now, steps, Project));
        lost.push(`${path}: ${message}; the entry was taken out`);
        continue;
      }
      const at = Number(steps[1]);
      if (drop.get(collection)?.has(at)) continue;
      const list = now[collection] as Holder[];
      const object = mended(list[at] as Holder, steps.slice(2), Project.shape[collection].element);
      if (object) {
        list[at] = object;
        lost.push(`${path}: ${message}; the name was taken out`);
      } else {
        drop.set(collection, (drop.get(collection) ?? new Set()).add(at));
        lost.push(`${path}: ${message}; the object was left out`);
      }
    }
    now = {
      ...now,
      ...Object.fromEntries(
        [...drop].map(([c, gone]) => [c, now[c].filter((_: unknown, i: number) => !gone.has(i))]),
      ),
    };
  }
}

/** The object without as little as possible: without the name, else without the list in which it stands. Null where neither fits. */
function mended(object: object, steps: readonly string[], schema: z.ZodType): Holder | null {
  for (let end = steps.length; end > 0; end--) {
    if (/^\d+$/.test(steps[end - 1] as string) || steps[end - 1] === 'id') continue;
    const copy = without(object, steps.slice(0, end));
    if (schema.safeParse(copy).success) return copy;
  }
  return null;
}

function without(object: object, steps: readonly string[]): Holder {
  const copy = structuredCopy(object) as Holder;
  const holder = steps.slice(0, -1).reduce<unknown>((o, step) => (o as Holder)[step], copy);
  delete (holder as Holder)[steps.at(-1) as string];
  return copy;
}

/** Plain data only, so that what is frozen can be written in. */
const structuredCopy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
