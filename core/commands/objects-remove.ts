import { z } from 'zod';
import { Id } from '../model/ids';
import { COLLECTIONS, type Collection, type Project } from '../model/project';
import type { Datum } from '../model/topology';
import { command } from './command';
import { removeObjects } from './shared/draft-object';
import { freedContacts } from './shared/drop-contact';
import { withoutUndefined } from './shared/without-undefined';

/** Takes objects away with everything that cannot stand without them: a connector takes its wires and mates. */
export const objectsRemove = command({
  id: 'objects.remove',
  label: 'Delete',
  args: z.strictObject({ ids: z.array(Id) }),
  refuse(project, { ids }) {
    const gone = new Set(ids);
    const kept = project.decisions.find((d) => gone.has(d.id));
    if (kept) return `Decision ${kept.number} is a record and stays.`;
    const part = project.parts.find((p) => gone.has(p.id));
    return part ? `${part.partNumber} is a part record; remove the objects that use it instead.` : null;
  },
  run(draft, { ids }, _context, project) {
    const gone = withDependents(project, ids);
    const rest = clearNames(draft, project, gone);
    for (const collection of COLLECTIONS) removeObjects(draft, rest, collection, gone);
    removeObjects(draft, project, 'contacts', freedContacts(project, gone));
  },
});

/** The objects and all that fall with them. */
function withDependents(project: Project, ids: readonly string[]): ReadonlySet<string> {
  const gone = new Set(ids);
  const take = <T extends { id: string }>(list: readonly T[], falls: (item: T) => boolean): void => {
    for (const item of list) if (!gone.has(item.id) && falls(item)) gone.add(item.id);
  };
  take(project.segments, (s) => gone.has(s.from) || gone.has(s.to));
  take(
    project.wires,
    (w) =>
      w.ends.some(
        (e) => (e.at === 'cavity' && gone.has(e.connector)) || (e.at === 'splice' && gone.has(e.splice)),
      ) ||
      (w.core !== undefined && gone.has(w.core.cable)),
  );
  take(project.mates, (m) => gone.has(m.a) || gone.has(m.b));
  take(project.groups, (g) => g.wires.filter((w) => !gone.has(w)).length < 2);
  take(project.fuses, (f) => gone.has(f.wire));
  take(project.coverings, (c) => gone.has(c.from.segment) || gone.has(c.to.segment));
  take(project.ties, (t) => gone.has(t.station.segment));
  take(project.fixings, (f) => gone.has(f.station.segment));
  take(project.dimensions, (d) => d.datums.filter((datum) => !gone.has(datumObject(datum))).length < 2);
  take(
    project.labels,
    ({ on }) =>
      (on.at === 'wire-end' && gone.has(on.wire)) ||
      (on.at === 'cable-end' && gone.has(on.cable)) ||
      (on.at === 'connector' && gone.has(on.connector)) ||
      (on.at === 'station' && gone.has(on.station.segment)),
  );
  return gone;
}

/** What stays forgets the names of what goes. Returns the project as it then stands, for the removal. */
function clearNames(
  draft: Parameters<typeof removeObjects>[0],
  project: Project,
  gone: ReadonlySet<string>,
): Project {
  const out = { ...project };
  const change = <C extends Collection>(
    collection: C,
    needs: (item: Project[C][number]) => boolean,
    mend: (item: Project[C][number]) => object,
  ): void => {
    const list = project[collection] as readonly Project[C][number][];
    if (!list.some((item) => !gone.has(item.id) && needs(item))) return;
    const mended = list.map((item) => (needs(item) ? withoutUndefined({ ...item, ...mend(item) }) : item));
    Object.assign(out, { [collection]: mended });
    Object.assign(draft, { [collection]: mended });
  };
  change('connectors', (c) => named(c.equipment) || named(c.node) || c.cavities.some((e) => named(e.signal)), (c) => ({
    equipment: keep(c.equipment),
    node: keep(c.node),
    cavities: c.cavities
      .map((e) => withoutUndefined({ ...e, signal: keep(e.signal) }))
      .filter((e) => Object.keys(e).length > 1),
  })); // prettier-ignore
  change('wires', (w) => named(w.signal) || w.path?.some(named) === true || w.ends.some((e) => e.at === 'free' && named(e.node)), (w) => ({
    signal: keep(w.signal),
    path: w.path?.some(named) ? undefined : w.path,
    ends: w.ends.map((e) => (e.at === 'free' ? withoutUndefined({ ...e, node: keep(e.node) }) : e)),
  })); // prettier-ignore
  change('groups', (g) => g.wires.some(named), (g) => ({ wires: g.wires.filter((w) => !gone.has(w)) })); // prettier-ignore
  change('dimensions', (d) => d.datums.some((datum) => named(datumObject(datum))), (d) => ({
    datums: d.datums.filter((datum) => !named(datumObject(datum))),
  })); // prettier-ignore
  change('splices', (s) => named(s.node), (s) => ({ node: keep(s.node) })); // prettier-ignore
  change('signals', (s) => named(s.source?.connector) || [s.pairedWith, s.returnsOn, s.redundantTo].some(named), (s) => ({
    source: named(s.source?.connector) ? undefined : s.source,
    pairedWith: keep(s.pairedWith),
    returnsOn: keep(s.returnsOn),
    redundantTo: keep(s.redundantTo),
  })); // prettier-ignore
  return out;

  function named(id: string | undefined): boolean {
    return id !== undefined && gone.has(id);
  }
  function keep(id: string | undefined): string | undefined {
    return named(id) ? undefined : id;
  }
}

function datumObject(datum: Datum): string {
  if (datum.at === 'node') return datum.node;
  return datum.at === 'connector' ? datum.connector : datum.station.segment;
}
