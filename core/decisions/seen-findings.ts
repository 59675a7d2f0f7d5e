import type { Finding } from '../rules/finding';
import { compareFindings, type Checked } from './compare-findings';

/** When a finding was first seen, and when it last said something else. Moments are texts that the caller passes in. */
export interface Seen {
  readonly first: string;
  /** True where it was there already when the watch began: it may be older. */
  readonly fromStart: boolean;
  readonly changed: string | null;
}

export type SeenFindings = ReadonlyMap<string, Seen>;

/**
 * The watch begins: what is there now may be older than this moment. The project file holds decisions and no history
 * of findings (a finding is derived, and an edit outside would leave such a history wrong), so the watch lasts as long
 * as the file is open.
 */
export const startSeen = (findings: readonly Finding[], now: string): SeenFindings =>
  new Map(findings.map((f) => [f.key, { first: now, fromStart: true, changed: null }]));

/** The watch goes on. A finding that went and came back is seen anew. */
export function goOnSeen(seen: SeenFindings, before: Checked, after: Checked, now: string): SeenFindings {
  const { gone, added, changed } = compareFindings(before, after);
  if (gone.length + added.length + changed.length === 0) return seen;
  const next = new Map(seen);
  for (const f of gone) next.delete(f.key);
  for (const f of added) next.set(f.key, { first: now, fromStart: false, changed: null });
  for (const { after: f } of changed) {
    const was = next.get(f.key);
    if (was) next.set(f.key, { ...was, changed: now });
  }
  return next;
}
