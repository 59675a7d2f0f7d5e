import type { Issue } from './problem';
import { COLLECTIONS, type Collection, type Project } from './project';
import type { WireEnd } from './wire';

/** One object naming another: where the name stands, and in which collection the named object must be. */
export interface Reference {
  readonly path: string;
  readonly collection: Collection;
  readonly id: string;
}

/** Every reference in a project, with its place. */
export function* referencesOf(project: Project): Generator<Reference> {
  const ref = (path: string, collection: Collection, id: string | undefined): Reference[] =>
    id === undefined ? [] : [{ path, collection, id }];

  for (const [i, s] of (project.purchasing?.stock ?? []).entries())
    yield* ref(`purchasing.stock[${i}].part`, 'parts', s.part);
  for (const [i, c] of project.connectors.entries()) {
    const at = `connectors[${i}]`;
    yield* ref(`${at}.part`, 'parts', c.part);
    yield* ref(`${at}.equipment`, 'equipment', c.equipment);
    yield* ref(`${at}.node`, 'nodes', c.node);
    for (const [k, e] of c.cavities.entries()) {
      yield* ref(`${at}.cavities[${k}].contact`, 'contacts', e.contact);
      yield* ref(`${at}.cavities[${k}].plug`, 'parts', e.plug);
      yield* ref(`${at}.cavities[${k}].signal`, 'signals', e.signal);
    }
    for (const [k, a] of c.accessories.entries()) yield* ref(`${at}.accessories[${k}].part`, 'parts', a.part);
  }
  for (const [i, c] of project.contacts.entries()) yield* ref(`contacts[${i}].part`, 'parts', c.part);
  for (const [i, c] of project.cables.entries()) yield* ref(`cables[${i}].part`, 'parts', c.part);
  for (const [i, w] of project.wires.entries()) {
    const at = `wires[${i}]`;
    yield* ref(`${at}.part`, 'parts', w.part);
    yield* ref(`${at}.core.cable`, 'cables', w.core?.cable);
    yield* ref(`${at}.signal`, 'signals', w.signal);
    for (const [k, end] of w.ends.entries()) yield* endReferences(`${at}.ends[${k}]`, end);
    for (const [k, s] of (w.path ?? []).entries()) yield* ref(`${at}.path[${k}]`, 'segments', s);
  }
  for (const [i, g] of project.groups.entries())
    for (const [k, w] of g.wires.entries()) yield* ref(`groups[${i}].wires[${k}]`, 'wires', w);
  for (const [i, s] of project.splices.entries()) {
    yield* ref(`splices[${i}].part`, 'parts', s.part);
    yield* ref(`splices[${i}].node`, 'nodes', s.node);
  }
  for (const [i, m] of project.mates.entries()) {
    yield* ref(`mates[${i}].a`, 'connectors', m.a);
    yield* ref(`mates[${i}].b`, 'connectors', m.b);
  }
  for (const [i, s] of project.signals.entries()) {
    yield* ref(`signals[${i}].source.connector`, 'connectors', s.source?.connector);
    yield* ref(`signals[${i}].pairedWith`, 'signals', s.pairedWith);
    yield* ref(`signals[${i}].returnsOn`, 'signals', s.returnsOn);
    yield* ref(`signals[${i}].redundantTo`, 'signals', s.redundantTo);
  }
  for (const [i, f] of project.fuses.entries()) {
    yield* ref(`fuses[${i}].part`, 'parts', f.part);
    yield* ref(`fuses[${i}].wire`, 'wires', f.wire);
  }
  for (const [i, s] of project.segments.entries()) {
    yield* ref(`segments[${i}].from`, 'nodes', s.from);
    yield* ref(`segments[${i}].to`, 'nodes', s.to);
  }
  for (const [i, c] of project.coverings.entries()) {
    yield* ref(`coverings[${i}].part`, 'parts', c.part);
    yield* ref(`coverings[${i}].from.segment`, 'segments', c.from.segment);
    yield* ref(`coverings[${i}].to.segment`, 'segments', c.to.segment);
  }
  for (const [i, t] of project.ties.entries()) {
    yield* ref(`ties[${i}].part`, 'parts', t.part);
    yield* ref(`ties[${i}].station.segment`, 'segments', t.station.segment);
  }
  for (const [i, f] of project.fixings.entries()) {
    yield* ref(`fixings[${i}].part`, 'parts', f.part);
    yield* ref(`fixings[${i}].station.segment`, 'segments', f.station.segment);
  }
  for (const [i, d] of project.dimensions.entries())
    for (const [k, datum] of d.datums.entries()) {
      const at = `dimensions[${i}].datums[${k}]`;
      if (datum.at === 'node') yield* ref(`${at}.node`, 'nodes', datum.node);
      else if (datum.at === 'connector') yield* ref(`${at}.connector`, 'connectors', datum.connector);
      else yield* ref(`${at}.station.segment`, 'segments', datum.station.segment);
    }
  for (const [i, l] of project.labels.entries()) {
    yield* ref(`labels[${i}].part`, 'parts', l.part);
    if (l.on.at === 'wire-end') yield* ref(`labels[${i}].on.wire`, 'wires', l.on.wire);
    else if (l.on.at === 'cable-end') yield* ref(`labels[${i}].on.cable`, 'cables', l.on.cable);
    else if (l.on.at === 'connector') yield* ref(`labels[${i}].on.connector`, 'connectors', l.on.connector);
    else yield* ref(`labels[${i}].on.station.segment`, 'segments', l.on.station.segment);
  }
}

function* endReferences(at: string, end: WireEnd): Generator<Reference> {
  if (end.at === 'cavity') {
    yield { path: `${at}.connector`, collection: 'connectors', id: end.connector };
    if (end.contact) yield { path: `${at}.contact`, collection: 'contacts', id: end.contact };
    if (end.seal) yield { path: `${at}.seal`, collection: 'parts', id: end.seal };
  } else if (end.at === 'splice') yield { path: `${at}.splice`, collection: 'splices', id: end.splice };
  else {
    if (end.terminal) yield { path: `${at}.terminal`, collection: 'parts', id: end.terminal };
    if (end.node) yield { path: `${at}.node`, collection: 'nodes', id: end.node };
  }
}

/** References to objects that are not there, ids used twice, and contacts that would be in two places at once. */
export function referenceIssues(project: Project): Issue[] {
  const issues: Issue[] = [];
  const ids = new Map<Collection, Set<string>>();
  for (const name of COLLECTIONS) {
    const seen = new Set<string>();
    for (const [i, item] of project[name].entries()) {
      if (seen.has(item.id))
        issues.push({ path: `${name}[${i}].id`, message: `id ${item.id} is used twice` });
      seen.add(item.id);
    }
    ids.set(name, seen);
  }
  for (const r of referencesOf(project)) {
    if (!ids.get(r.collection)?.has(r.id))
      issues.push({ path: r.path, message: `no such object in ${r.collection}: ${r.id}` });
  }
  return issues.concat(contactsInTwoPlaces(project));
}

function contactsInTwoPlaces(project: Project): Issue[] {
  const places = new Map<string, string>();
  const issues: Issue[] = [];
  const put = (contact: string | undefined, place: string, path: string): void => {
    if (!contact) return;
    const known = places.get(contact);
    if (known === undefined) places.set(contact, place);
    else if (known !== place) issues.push({ path, message: `contact ${contact} is in two cavities at once` });
  };
  for (const [i, c] of project.connectors.entries())
    for (const [k, e] of c.cavities.entries())
      put(e.contact, `${c.id}:${e.cavity}`, `connectors[${i}].cavities[${k}].contact`);
  for (const [i, w] of project.wires.entries())
    for (const [k, end] of w.ends.entries())
      if (end.at === 'cavity')
        put(end.contact, `${end.connector}:${end.cavity}`, `wires[${i}].ends[${k}].contact`);
  return issues;
}
