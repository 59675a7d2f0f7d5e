import { listDifference } from '../base/list-difference';

type WithId = { readonly id: string };

/** Ids of the objects that were added, removed or replaced between two states of a collection. */
export function changedIds(
  before: readonly WithId[] | undefined,
  after: readonly WithId[],
): ReadonlySet<string> {
  if (!before) return new Set(after.map((o) => o.id));
  const { gone, fresh } = listDifference(before, after);
  return gone.length === 0 && fresh.length === 0 ? NONE : new Set([...gone, ...fresh].map((o) => o.id));
}

const NONE: ReadonlySet<string> = new Set();
