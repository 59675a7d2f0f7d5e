import { memoByIdentity } from '../base/memo-by-identity';
import { ok, problem, type Result } from '../base/result';
import type { CalcProblem } from '../calc/calc-problem';
import type { Branch, Load, Network, Source, Warming } from '../calc/network/network';
import type { Signal } from '../model/electrical';
import { branchesOfWire, type CircuitInput } from './circuit-wires';
import type { Net, NetPoint, ResolvedMate, ResolvedWire } from './harness';
import { pointKey } from './nets';

/** What a circuit is computed for. */
export interface CircuitConditions {
  /** Temperature of conductors for which `warming` knows nothing, degrees C. */
  readonly conductorC: number;
  /** Ambient, rating and ampacity of a wire, where they are known. */
  readonly warming?: (wire: ResolvedWire) => Warming | undefined;
  /** Current of one load by `loadId`, A; a signal's current is else shared equally by its loads. */
  readonly loadA?: (loadId: string) => number | undefined;
}

/** The network of a supply: its feeds, their common return, and what was left out or assumed to get it. */
export interface NetCircuit {
  readonly network: Network;
  readonly feeds: readonly Signal[];
  readonly returnSignal: Signal;
  /** Nets that take part, in the order of the harness. */
  readonly nets: readonly Net[];
  readonly wireOfBranch: ReadonlyMap<string, ResolvedWire>;
  /** Resistances taken as zero because no record states them. */
  readonly notCounted: readonly string[];
  readonly assumed: readonly string[];
}

/** Id of the load that a signal has at an equipment or connector. */
export const loadId = (signal: Signal, device: string): string => `load ${signal.id} ${device}`;

/**
 * The circuit to which a net belongs: every signal that returns on the same signal as this net's, since they share the return
 * conductors. A declared position at equipment (or on a connector that stays free) is an end: the one that the signal names is
 * fed, the others draw. Positions of one signal at one equipment are joined inside it. Positions, currents, voltages and
 * lengths that are missing are named; resistances of contacts, splices and fuses that no record states count as zero and
 * are listed.
 */
export function circuitOfNet(
  harness: CircuitInput,
  net: Net,
  conditions: CircuitConditions,
): Result<NetCircuit, CalcProblem> {
  const signals = net.signals;
  const own = signals[0];
  if (!own || signals.length > 1)
    return needs([
      own
        ? `one signal on the net (it has ${signals.map((s) => s.name).join(', ')})`
        : 'the signal of the net',
    ]);
  const all = harness.project.signals;
  const returnSignal =
    all.find((s) => s.id === own.returnsOn) ?? (all.some((s) => s.returnsOn === own.id) ? own : undefined);
  if (!returnSignal) return needs([`the signal on which ${own.name} returns`]);
  const netsOf = netsBySignal(harness.nets);
  const feeds = all.filter((s) => s.returnsOn === returnSignal.id && netsOf.has(s.id));
  const nets = [...new Set([...feeds, returnSignal].flatMap((s) => netsOf.get(s.id) ?? []))];

  const missing: string[] = [];
  const notCounted = new Set<string>();
  const assumed: string[] = [];
  const branches: Branch[] = [];
  const wireOfBranch = new Map<string, ResolvedWire>();
  for (const wire of new Set(nets.flatMap((n) => n.wires))) {
    const built = branchesOfWire(harness, wire, conditions);
    missing.push(...built.missing);
    built.notCounted.forEach((text) => notCounted.add(text));
    branches.push(...built.branches);
    if (built.wireBranch !== undefined) wireOfBranch.set(built.wireBranch, wire);
  }
  branches.push(...mateBranches(harness, nets, notCounted));

  const returns = endsOf(nets, returnSignal);
  const sources: Source[] = [];
  const loads: Load[] = [];
  for (const feed of feeds) {
    const at = feedEnds(feed, endsOf(nets, feed), returns, missing);
    if (!at) continue;
    const { voltageV, currentA } = feed;
    if (voltageV === undefined || currentA === undefined) continue;
    sources.push({
      id: `source ${feed.id}`,
      positive: inside(feed, at.source),
      negative: inside(returnSignal, at.source),
      voltageV,
      innerOhm: 0,
    });
    if (at.loads.length > 1 && at.loads.some((d) => conditions.loadA?.(loadId(feed, d)) === undefined))
      assumed.push(`the ${currentA} A of ${feed.name} are shared equally by its ${at.loads.length} loads`);
    for (const device of at.loads) {
      const id = loadId(feed, device);
      const drawnA = conditions.loadA?.(id) ?? currentA / at.loads.length;
      loads.push({
        id,
        from: inside(feed, device),
        to: inside(returnSignal, device),
        draws: 'current',
        currentA: drawnA,
      });
    }
  }
  if (missing.length) return needs([...new Set(missing)]);
  for (const signal of [...feeds, returnSignal])
    for (const [device, points] of endsOf(nets, signal))
      for (const key of points)
        branches.push({ id: `inside ${key}`, from: key, to: inside(signal, device), ohm: 0 });
  const first = sources[0];
  return ok({
    network: { branches, sources, loads, ...(first ? { reference: first.negative } : {}) },
    feeds,
    returnSignal,
    nets,
    wireOfBranch,
    notCounted: [...notCounted],
    assumed,
  });
}

const needs = (inputs: readonly string[]): Result<never, CalcProblem> => problem({ code: 'needs', inputs });

/** Where a signal comes together inside an equipment. */
const inside = (signal: Signal, device: string): string => `${device} ${signal.id}`;

const netsBySignal = memoByIdentity((nets: readonly Net[]): ReadonlyMap<string, readonly Net[]> => {
  const map = new Map<string, Net[]>();
  for (const net of nets) for (const s of net.signals) map.set(s.id, [...(map.get(s.id) ?? []), net]);
  return map;
});

const matesByConnector = memoByIdentity(
  (mates: readonly ResolvedMate[]): ReadonlyMap<string, readonly ResolvedMate[]> => {
    const map = new Map<string, ResolvedMate[]>();
    for (const m of mates)
      for (const use of [m.a, m.b]) {
        const id = use.resolved.connector.id;
        map.set(id, [...(map.get(id) ?? []), m]);
      }
    return map;
  },
);

/** Equipment to which a position belongs, or the connector itself. */
export const deviceOf = (point: NetPoint): string =>
  point.connector.connector.equipment ?? point.connector.connector.id;

/** Declared positions of a signal where the harness ends, by equipment. */
function endsOf(nets: readonly Net[], signal: Signal): ReadonlyMap<string, readonly string[]> {
  const ends = new Map<string, string[]>();
  for (const net of nets)
    for (const p of net.points) {
      const { connector } = p.connector;
      const isEnd =
        connector.supply === 'equipment' || connector.equipment !== undefined || connector.unmated === true;
      if (p.declared?.id !== signal.id || !isEnd) continue;
      const device = deviceOf(p);
      ends.set(device, [...(ends.get(device) ?? []), pointKey(connector.id, p.cavity)]);
    }
  return ends;
}

/** The fed end of a signal and those that draw; what is missing is added to the list. */
function feedEnds(
  feed: Signal,
  ends: ReadonlyMap<string, readonly string[]>,
  returns: ReadonlyMap<string, readonly string[]>,
  missing: string[],
): { readonly source: string; readonly loads: readonly string[] } | undefined {
  if (feed.voltageV === undefined) missing.push(`voltage of ${feed.name}`);
  if (feed.currentA === undefined) missing.push(`current of ${feed.name}`);
  if (!feed.source) {
    missing.push(`source of ${feed.name}`);
    return undefined;
  }
  const key = pointKey(feed.source.connector, feed.source.cavity);
  const source = [...ends].find(([, points]) => points.includes(key))?.[0];
  if (source === undefined) {
    missing.push(`a declared position of ${feed.name} at its source`);
    return undefined;
  }
  const loads = [...ends.keys()].filter((d) => d !== source);
  if (loads.length === 0) missing.push(`a declared position of ${feed.name} at what it feeds`);
  for (const d of [source, ...loads])
    if (!returns.has(d)) missing.push(`a return position for ${feed.name} at each of its ends`);
  return { source, loads };
}

/** Pairs of mated contacts: the larger of what the two records state, since both state the same joint. */
function mateBranches(harness: CircuitInput, nets: readonly Net[], notCounted: Set<string>): Branch[] {
  const out = new Map<string, Branch>();
  const mates = matesByConnector(harness.mates);
  for (const net of nets)
    for (const p of net.points)
      for (const m of mates.get(p.connector.connector.id) ?? []) {
        const isA = m.a.resolved.connector.id === p.connector.connector.id;
        const a = isA ? p.cavity : m.map.fromB.get(p.cavity);
        const b = isA ? m.map.fromA.get(p.cavity) : p.cavity;
        if (a === undefined || b === undefined) continue;
        const id = `mate ${m.mate.id} ${a}`;
        if (out.has(id)) continue;
        const stated = [contactMohm(m, 'a', a), contactMohm(m, 'b', b)].filter((r) => r !== undefined);
        const name = `${m.a.resolved.connector.designator}:${a} to ${m.b.resolved.connector.designator}:${b}`;
        if (stated.length === 0) notCounted.add(`contact resistance, ${name}`);
        out.set(id, {
          id,
          from: pointKey(m.a.resolved.connector.id, a),
          to: pointKey(m.b.resolved.connector.id, b),
          ohm: Math.max(0, ...stated) / 1000,
        });
      }
  return [...out.values()];
}

function contactMohm(mate: ResolvedMate, side: 'a' | 'b', cavity: string): number | undefined {
  const use = mate[side];
  const part = use.resolved.part;
  if (part?.kind === 'header') return part.resistanceMohm;
  const at = use.cavities.find((c) => c.cavity === cavity);
  return (at?.ends.find((e) => e.end.contactPart)?.end.contactPart ?? at?.spare)?.resistanceMohm;
}
