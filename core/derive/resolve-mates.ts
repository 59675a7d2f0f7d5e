import { byId } from '../base/by-id';
import type { ListDifference } from '../base/list-difference';
import { memoByIdentity } from '../base/memo-by-identity';
import { reuse, reuseList } from '../base/same-fields';
import type { Mate } from '../model/connector';
import type { Project } from '../model/project';
import type { ConnectorUse, Harness, ResolvedMate } from './harness';
import { mateMapOf } from './mate-map';

/** The mates of each connector that has one. */
export const matesByConnector = memoByIdentity(
  (mates: readonly Mate[]): ReadonlyMap<string, readonly Mate[]> => {
    const out = new Map<string, Mate[]>();
    for (const m of mates)
      for (const id of m.a === m.b ? [m.a] : [m.a, m.b]) {
        const list = out.get(id);
        if (list) list.push(m);
        else out.set(id, [m]);
      }
    return out;
  },
);

export const matesById = (
  mates: readonly Mate[],
  resolved: readonly ResolvedMate[],
): ReadonlyMap<string, ResolvedMate> =>
  mates.length === resolved.length
    ? byId(mates).beside(resolved)
    : new Map(resolved.map((m) => [m.mate.id, m]));

/** Mates of which both halves are there, in project order; given the state before, only those that an edit touched anew. */
export function resolveMates(
  project: Project,
  connectors: ReadonlyMap<string, ConnectorUse>,
  was: Harness | undefined,
  changed: ListDifference<ConnectorUse> | undefined,
): readonly ResolvedMate[] {
  const resolve = (mate: Mate): ResolvedMate | undefined =>
    resolveMate(mate, connectors, was?.mateById.get(mate.id));
  const isWhole = was?.mates.length === project.mates.length && was.project.mates === project.mates;
  if (!isWhole || !changed)
    return reuseList(
      was?.mates,
      project.mates.flatMap((m) => resolve(m) ?? []),
    );

  const touched = new Set<Mate>();
  for (const use of changed.gone) for (const m of use.mates) touched.add(m);
  for (const use of changed.fresh) for (const m of use.mates) touched.add(m);
  if (touched.size === 0) return was.mates;
  const out = was.mates.slice();
  for (const mate of touched) {
    const at = byId(project.mates).placeOf(mate.id);
    const next = resolve(mate);
    if (at === undefined || !next) return project.mates.flatMap((m) => resolve(m) ?? []);
    out[at] = next;
  }
  return reuseList(was.mates, out);
}

function resolveMate(
  mate: Mate,
  connectors: ReadonlyMap<string, ConnectorUse>,
  old: ResolvedMate | undefined,
): ResolvedMate | undefined {
  const a = connectors.get(mate.a);
  const b = connectors.get(mate.b);
  if (!a || !b) return undefined;
  const sameMap =
    old?.mate === mate && old.a.resolved.part === a.resolved.part && old.b.resolved.part === b.resolved.part;
  const map = sameMap ? old.map : mateMapOf(mate, a.resolved.part, b.resolved.part);
  return reuse<ResolvedMate>(old, { mate, a, b, map });
}
