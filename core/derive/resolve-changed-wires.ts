import { byId } from '../base/by-id';
import { resultsBeside } from '../base/results-beside';
import { reuseList } from '../base/same-fields';
import type { Project } from '../model/project';
import type { Group, Wire } from '../model/wire';
import { endsAt, type EndTable } from './cavity-uses';
import { changedIds, isNone, type ChangedNames } from './changed-ids';
import type { Harness, ResolvedConnector, ResolvedWire } from './harness';
import { groupsOfWires, resolveWire, wireLookups } from './resolve-wires';
import type { Router } from './route';
import { isTwisted } from './twist';

/** What is known of the state before when wires are resolved. */
export interface WiresBefore {
  readonly harness: Harness;
  readonly ends: EndTable;
  readonly names: ChangedNames;
  /** Connectors that resolve to another object than before, or no longer at all. */
  readonly connectors: ReadonlySet<string>;
}

/** All wires of a project; given the state before, only those are resolved again that an edit touched. */
export function resolveWires(
  project: Project,
  connectors: ReadonlyMap<string, ResolvedConnector>,
  router: Router,
  before: WiresBefore | undefined,
): readonly ResolvedWire[] {
  const look = wireLookups(project, byId(project.parts), connectors, router);
  const was = before?.harness;
  const resolve = (wire: Wire): ResolvedWire => resolveWire(wire, look, was?.wireById.get(wire.id));
  const rerouted = was && router.touchedSince(was.router);
  if (!before || !was || (was.router !== router && !rerouted))
    return reuseList(was?.wires, project.wires.map(resolve));

  const { results, made } = resultsBeside(
    project.wires,
    { list: was.project.wires, results: was.wires },
    resolve,
  );
  const out = results as ResolvedWire[];
  const ids = byId(project.wires);
  const done = new Set(made);
  const again = (id: string): void => {
    const at = ids.placeOf(id);
    if (at === undefined || done.has(at)) return;
    done.add(at);
    out[at] = resolve(project.wires[at]!);
  };
  for (const id of touchedWires(project, before)) again(id);
  // A wire without a way may have got one.
  if (rerouted && was.router !== router)
    for (const w of was.wires) if (!w.route.found || rerouted.has(w.route)) again(w.wire.id);
  return reuseList(was.wires, out);
}

/** Ids of wires that name something that changed, or that are twisted with such a wire. */
function touchedWires(project: Project, { harness, ends, names, connectors }: WiresBefore): Set<string> {
  const out = new Set<string>();
  for (const id of connectors) for (const { wire } of endsAt(ends, id)) out.add(wire.wire.id);
  if (ends.isDangling && connectors.size > 0)
    for (const { id, ends: both } of project.wires)
      if (both.some((e) => e.at === 'cavity' && connectors.has(e.connector))) out.add(id);
  if (!isNone(names)) for (const wire of project.wires) if (doesName(wire, names)) out.add(wire.id);

  const groups = new Set<Group>();
  if (harness.project.groups !== project.groups) {
    const changed = changedIds(harness.project.groups, project.groups);
    for (const list of [harness.project.groups, project.groups])
      for (const group of list) if (changed.has(group.id)) groups.add(group);
  }
  // The take-up of a twisted wire hangs on the diameters of those it is twisted with.
  const groupOf = groupsOfWires(project.groups);
  for (const id of [...changedIds(harness.project.wires, project.wires), ...out]) {
    const group = groupOf.get(id);
    if (isTwisted(group)) groups.add(group);
  }
  for (const group of groups) for (const id of group.wires) out.add(id);
  return out;
}

function doesName(wire: Wire, names: ChangedNames): boolean {
  if (wire.part !== undefined && names.parts.has(wire.part)) return true;
  if (wire.signal !== undefined && names.signals.has(wire.signal)) return true;
  if (wire.core !== undefined && names.cables.has(wire.core.cable)) return true;
  for (const end of wire.ends) {
    if (end.at === 'splice' && names.splices.has(end.splice)) return true;
    if (end.at !== 'cavity') continue;
    if (end.contact !== undefined && names.contacts.has(end.contact)) return true;
    if (end.seal !== undefined && names.parts.has(end.seal)) return true;
  }
  return false;
}
