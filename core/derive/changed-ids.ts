import { listDifference } from '../base/list-difference';
import type { Project } from '../model/project';

type WithId = { readonly id: string };

/** Ids of the objects that were added, removed or replaced between two states of a collection. */
export function changedIds(before: readonly WithId[], after: readonly WithId[]): ReadonlySet<string> {
  if (before === after) return NONE;
  const { gone, fresh } = listDifference(before, after);
  const out = new Set<string>();
  for (const { id } of gone) out.add(id);
  for (const { id } of fresh) out.add(id);
  return out;
}

const NONE: ReadonlySet<string> = new Set();

/** Collections that wires and cavities name, with the ids of what an edit changed in them. */
export interface ChangedNames {
  readonly parts: ReadonlySet<string>;
  /** Also those whose part changed. */
  readonly contacts: ReadonlySet<string>;
  /** Also those whose part changed. */
  readonly cables: ReadonlySet<string>;
  readonly signals: ReadonlySet<string>;
  readonly splices: ReadonlySet<string>;
}

export function changedNames(before: Project, after: Project): ChangedNames {
  const parts = changedIds(before.parts, after.parts);
  const withParts = (
    changed: ReadonlySet<string>,
    list: readonly (WithId & { readonly part?: string | undefined })[],
  ): ReadonlySet<string> => {
    if (parts.size === 0) return changed;
    return new Set([
      ...changed,
      ...list.flatMap((o) => (o.part !== undefined && parts.has(o.part) ? o.id : [])),
    ]);
  };
  return {
    parts,
    contacts: withParts(changedIds(before.contacts, after.contacts), after.contacts),
    cables: withParts(changedIds(before.cables, after.cables), after.cables),
    signals: changedIds(before.signals, after.signals),
    splices: changedIds(before.splices, after.splices),
  };
}

export const isNone = (names: ChangedNames): boolean =>
  names.parts.size + names.contacts.size + names.cables.size + names.signals.size + names.splices.size === 0;
