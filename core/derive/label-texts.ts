import { memoByIdentity } from '../base/memo-by-identity';
import { ok, problem, type Result } from '../base/result';
import { compareNatural } from '../base/stable-order';
import type { Project } from '../model/project';
import type { ConnectorUse, Harness, ResolvedEnd, ResolvedWire } from './harness';
import { netOfWire } from './nets-of';

/** How ends are marked, in the methods of IEC 62491. */
export type LabelMethod = NonNullable<Project['labelMethod']>;

/** What a mark says by the method, or what of the project it needs to say it. */
export type MethodText = Result<string, string>;

/**
 * What the mark of a wire end says: the designator of the wire, the place where this end goes, that of the other end, both,
 * or the signal. A place is `X1:3` for a cavity and the designator of a splice; a free end is called by its own text, else
 * by its wire as the object and the end as its terminal, 1 or 2 (`W7:2`).
 */
export function wireEndText(
  harness: Harness,
  wire: ResolvedWire,
  end: 0 | 1,
  method: LabelMethod,
): MethodText {
  const here = endPlace(wire, end);
  const there = endPlace(wire, end === 0 ? 1 : 0);
  switch (method) {
    case 'identification':
      return ok(wire.wire.designator);
    case 'local-end':
      return ok(here);
    case 'remote-end':
      return ok(there);
    case 'both-ends':
      return ok(`${here} / ${there}`);
    case 'signal':
      return signalText(harness, wire);
  }
}

/** Where an end of a wire goes, see `wireEndText`. */
export function endPlace(wire: ResolvedWire, index: 0 | 1): string {
  const { end, connector, splice } = index === 0 ? wire.from : wire.to;
  if (end.at === 'cavity') return `${connector?.connector.designator ?? '?'}:${end.cavity}`;
  if (end.at === 'splice') return splice?.designator ?? '?';
  return end.text ?? `${wire.wire.designator}:${index + 1}`;
}

function signalText(harness: Harness, wire: ResolvedWire): MethodText {
  if (wire.signal) return ok(wire.signal.name);
  const names = netOfWire(harness.nets, wire)?.signals.map((s) => s.name) ?? [];
  const [name] = names;
  if (name !== undefined && names.length === 1) return ok(name);
  return problem(
    names.length === 0
      ? 'the signal'
      : `one signal: the net names ${[...names].sort(compareNatural).join(' and ')}`,
  );
}

/**
 * What the mark of a connector says. It carries many signals, so that method and the identification both name the connector
 * itself; its other end is what it is mated with.
 */
export function connectorText(harness: Harness, use: ConnectorUse, method: LabelMethod): MethodText {
  const { id, designator } = use.resolved.connector;
  const mated = use.mates
    .map((m) => harness.connectorById.get(m.a === id ? m.b : m.a)?.resolved.connector.designator ?? '?')
    .sort(compareNatural)
    .join(' + ');
  if (method === 'remote-end')
    return mated === '' ? problem('the connector that it is mated with') : ok(mated);
  return ok(method === 'both-ends' && mated !== '' ? `${designator} / ${mated}` : designator);
}

/** A cable with the objects that its cores go to at either end, each once, in natural order. */
export interface CableEnds {
  readonly cores: readonly ResolvedWire[];
  readonly places: readonly [readonly string[], readonly string[]];
}

/**
 * The ends of the cables, by id. A core that was drawn the other way round is turned, so that what lies at one end of the
 * cable stands at one end here. The first end is where the first core, by designator, begins.
 */
export const cableEnds = memoByIdentity((harness: Harness): ReadonlyMap<string, CableEnds> => {
  const cores = new Map<string, ResolvedWire[]>();
  for (const wire of [...harness.wires].sort((a, b) =>
    compareNatural(a.wire.designator, b.wire.designator),
  )) {
    const cable = wire.wire.core?.cable;
    if (cable !== undefined) cores.set(cable, [...(cores.get(cable) ?? []), wire]);
  }
  return new Map([...cores].map(([id, wires]) => [id, { cores: wires, places: sidesOf(wires) }]));
});

function sidesOf(cores: readonly ResolvedWire[]): CableEnds['places'] {
  const [a, b] = [new Set<string>(), new Set<string>()];
  for (const core of cores) {
    const [from, to] = [objectAt(core.from, core), objectAt(core.to, core)];
    const straight = Number(a.has(from)) + Number(b.has(to));
    const turned = Number(b.has(from)) + Number(a.has(to));
    a.add(turned > straight ? to : from);
    b.add(turned > straight ? from : to);
  }
  return [[...a].sort(compareNatural), [...b].sort(compareNatural)];
}

const objectAt = ({ end, connector, splice }: ResolvedEnd, wire: ResolvedWire): string =>
  end.at === 'cavity'
    ? (connector?.connector.designator ?? '?')
    : end.at === 'splice'
      ? (splice?.designator ?? '?')
      : (end.text ?? wire.wire.designator);

/** What the mark of a cable end says. It carries many signals, so that method names the cable itself too. */
export function cableEndText(
  harness: Harness,
  cable: Project['cables'][number],
  end: 0 | 1,
  method: LabelMethod,
): MethodText {
  if (method === 'identification' || method === 'signal') return ok(cable.designator);
  const ends = cableEnds(harness).get(cable.id);
  if (!ends) return problem('a core in use');
  const [here, there] = [ends.places[end], ends.places[end === 0 ? 1 : 0]].map((p) => p.join(' + ')) as [
    string,
    string,
  ];
  if (method === 'local-end') return ok(here);
  return ok(method === 'remote-end' ? there : `${here} / ${there}`);
}
