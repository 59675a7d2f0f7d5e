import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import { reuse, reuseList } from '../base/same-fields';
import type { Contact } from '../model/connector';
import type { Signal } from '../model/electrical';
import { partOfKind, type Part } from '../model/parts/part';
import type { Conductor } from '../model/parts/wire';
import type { Project } from '../model/project';
import type { Segment } from '../model/topology';
import type { Cable, Group, Splice, Wire, WireEnd } from '../model/wire';
import type { ResolvedConnector, ResolvedEnd, ResolvedWire } from './harness';
import type { Router } from './route';
import { isTwisted, twistOf, type Twist } from './twist';
import { wireLengthOf, type WireLength } from './wire-length';

export interface WireLookups {
  readonly parts: ReadonlyMap<string, Part>;
  readonly connectors: ReadonlyMap<string, ResolvedConnector>;
  readonly contacts: ReadonlyMap<string, Contact>;
  readonly signals: ReadonlyMap<string, Signal>;
  readonly splices: ReadonlyMap<string, Splice>;
  readonly cables: ReadonlyMap<string, Cable>;
  readonly groupOfWire: ReadonlyMap<string, Group>;
  readonly segments: ReadonlyMap<string, Segment>;
  readonly router: Router;
  twistOfGroup(group: Group): Twist;
}

export function wireLookups(
  project: Project,
  parts: ReadonlyMap<string, Part>,
  connectors: ReadonlyMap<string, ResolvedConnector>,
  router: Router,
): WireLookups {
  const cables = byId(project.cables);
  const twists = new Map<string, Twist>();
  const twistOfGroup = (group: Group): Twist => {
    const known = twists.get(group.id);
    if (known) return known;
    const wires = byId(project.wires);
    const conductors = group.wires.map((id) => {
      const wire = wires.get(id);
      return wire && conductorOf(partOfWire(wire, parts, cables), wire.core?.name);
    });
    const twist = twistOf(group, conductors);
    twists.set(group.id, twist);
    return twist;
  };
  return {
    parts,
    connectors,
    contacts: byId(project.contacts),
    signals: byId(project.signals),
    splices: byId(project.splices),
    cables,
    twistOfGroup,
    groupOfWire: groupsOfWires(project.groups),
    segments: byId(project.segments),
    router,
  };
}

/** The group of each wire that has one. */
export const groupsOfWires = memoByIdentity((groups: readonly Group[]): ReadonlyMap<string, Group> => {
  const out = new Map<string, Group>();
  for (const group of groups) for (const id of group.wires) out.set(id, group);
  return out;
});

/** One wire with everything it refers to; the very `previous` object when nothing of it changed. */
export function resolveWire(wire: Wire, look: WireLookups, previous: ResolvedWire | undefined): ResolvedWire {
  const part = partOfWire(wire, look.parts, look.cables);
  const group = look.groupOfWire.get(wire.id);
  // The core of a cable has its lay within the cable.
  const twist = isTwisted(group) && !wire.core ? look.twistOfGroup(group) : undefined;
  const from = resolveEnd(wire.ends[0], look, previous?.from);
  const to = resolveEnd(wire.ends[1], look, previous?.to);
  // The very object that the router knows: by it an edit of the board finds the wires that it concerns.
  const route = wire.path
    ? look.router.along(wire.path, from.node, to.node)
    : look.router.between(from.node, to.node);
  const segments = route.found ? route.segments.flatMap((id) => look.segments.get(id) ?? []) : NO_SEGMENTS;
  return reuse(previous, {
    wire,
    part,
    conductor: conductorOf(part, wire.core?.name),
    signal: wire.signal ? look.signals.get(wire.signal) : undefined,
    group,
    from,
    to,
    route,
    segments: reuseList(previous?.segments, segments),
    length: reuseLength(previous?.length, wireLengthOf(wire, from, to, route, twist)),
  });
}

const NO_SEGMENTS: readonly Segment[] = [];

function resolveEnd(end: WireEnd, look: WireLookups, previous: ResolvedEnd | undefined): ResolvedEnd {
  const connector = end.at === 'cavity' ? look.connectors.get(end.connector) : undefined;
  const contact = end.at === 'cavity' && end.contact ? look.contacts.get(end.contact) : undefined;
  const splice = end.at === 'splice' ? look.splices.get(end.splice) : undefined;
  return reuse(previous, {
    end,
    connector,
    contact,
    contactPart: contact && partOfKind(look.parts.get(contact.part), 'contact'),
    seal: end.at === 'cavity' && end.seal ? partOfKind(look.parts.get(end.seal), 'wire-seal') : undefined,
    splice,
    node: connector?.connector.node ?? splice?.node ?? (end.at === 'free' ? end.node : undefined),
  });
}

function partOfWire(
  wire: Wire,
  parts: ReadonlyMap<string, Part>,
  cables: ReadonlyMap<string, Cable>,
): Part | undefined {
  const cable = wire.core ? cables.get(wire.core.cable) : undefined;
  return parts.get(cable?.part ?? wire.part ?? '');
}

function conductorOf(part: Part | undefined, core: string | undefined): Conductor | undefined {
  if (part?.kind === 'wire') return part;
  if (part?.kind === 'cable') return part.cores.find((c) => c.name === core);
  return undefined;
}

function reuseLength(previous: WireLength | undefined, next: WireLength): WireLength {
  return previous && JSON.stringify(previous) === JSON.stringify(next) ? previous : next;
}
