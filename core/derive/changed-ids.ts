type WithId = { readonly id: string };

/**
 * Ids of the objects that were added, removed or replaced between two states of a collection. Empty and cheap
 * when the array is the same one; otherwise one pass that compares by identity.
 */
export function changedIds(
  before: readonly WithId[] | undefined,
  after: readonly WithId[],
): ReadonlySet<string> {
  if (before === after) return NONE;
  if (!before) return new Set(after.map((o) => o.id));
  const changed = new Set<string>();
  const n = Math.max(before.length, after.length);
  for (let i = 0; i < n; i++) {
    const a = before[i];
    const b = after[i];
    if (a === b) continue;
    if (a) changed.add(a.id);
    if (b) changed.add(b.id);
  }
  return changed;
}

const NONE: ReadonlySet<string> = new Set();
