import { REMEMBERED_FINDINGS, type RememberedFinding } from '../model/remembered-finding';
import { compareText } from '../base/stable-order';
import { idFromText } from '../model/ids';
import type { Finding } from '../rules/finding';
import { compareFindings, fingerprint, type Checked } from './compare-findings';

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
 * of findings (a finding is derived, and an edit outside would leave such a history wrong); the machine remembers it.
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

/**
 * What the machine remembers from before comes to a watch that has just begun. A finding that it remembers keeps its first
 * day, and has changed by now where it says something else; one that it does not know has come since.
 */
export function recall(
  seen: SeenFindings,
  checked: Checked,
  remembered: readonly RememberedFinding[],
  now: string,
): SeenFindings {
  const known = new Map(remembered.map((r) => [r.finding, r]));
  const next = new Map(seen);
  for (const f of checked.findings) {
    const old = known.get(idFromText(f.key));
    const here = seen.get(f.key);
    if (here && !here.fromStart) continue;
    if (!old)
      next.set(f.key, { first: here?.first ?? now, fromStart: false, changed: here?.changed ?? null });
    else {
      const changed = here?.changed ?? (old.says === saysOf(checked, f) ? old.changed : now);
      next.set(f.key, { first: old.first, fromStart: false, changed });
    }
  }
  return next;
}

/** The watch for the machine to remember: the findings seen last go first, should there be too many. */
export function toRemember(seen: SeenFindings, checked: Checked): readonly RememberedFinding[] {
  return checked.findings
    .flatMap((f): RememberedFinding[] => {
      const here = seen.get(f.key);
      return here
        ? [{ finding: idFromText(f.key), says: saysOf(checked, f), first: here.first, changed: here.changed }]
        : [];
    })
    .sort(
      (a, b) => compareText(b.changed ?? b.first, a.changed ?? a.first) || compareText(a.finding, b.finding),
    )
    .slice(0, REMEMBERED_FINDINGS);
}

const saysOf = ({ project }: Checked, finding: Finding): string => idFromText(fingerprint(project, finding));
