import { memoByIdentity } from '../base/memo-by-identity';
import { ok, problem, type Result } from '../base/result';
import type { CalcProblem } from '../calc/calc-problem';
import { networkProblemText, type NetworkSolution } from '../calc/network/network';
import { solveNetwork } from '../calc/network/solve-network';
import type { Signal } from '../model/electrical';
import type { LimitSet } from '../model/limit-set';
import { circuitOfNet, type NetCircuit } from './circuit-of-net';
import type { Net, ResolvedMate, ResolvedWire, Supply } from './harness';
import { limitValue, wireAmpacity } from './wire-ampacity';

export interface SolvedSupply {
  readonly circuit: NetCircuit;
  readonly solution: NetworkSolution;
  /** Temperature of the air, degrees C. */
  readonly ambientC: number;
}

/** A current in A. `stated`: that of the signal, taken whole, since the circuit could not be solved. */
export interface KnownCurrent {
  readonly currentA: number;
  readonly basis: 'solved' | 'stated';
}

export interface SupplyCurrents {
  readonly solved: Result<SolvedSupply, CalcProblem>;
  ofWire(wire: ResolvedWire): KnownCurrent | undefined;
  /** Through the pair of contacts that meet at a cavity of half `a`. */
  ofMate(mate: ResolvedMate, cavityOfA: string): KnownCurrent | undefined;
}

const solutions = new WeakMap<Supply, { readonly set: LimitSet; readonly currents: SupplyCurrents }>();

/**
 * The currents of a supply under a limit set: solved as a circuit where everything is stated for it, else each signal's own
 * current in every wire of its net, and the sum of the feeds in the return. Kept as long as the supply keeps its identity.
 */
export function supplyCurrents(supply: Supply, set: LimitSet): SupplyCurrents {
  const before = solutions.get(supply);
  if (before?.set === set) return before.currents;
  const currents = currentsOf(supply, solve(supply, set));
  solutions.set(supply, { set, currents });
  return currents;
}

function solve(supply: Supply, set: LimitSet): Result<SolvedSupply, CalcProblem> {
  const { feeds, returnSignal, nets, mates, fuses, parts } = supply;
  const ambientC = limitValue(set, 'ambient-temperature');
  const net = nets.find((n) => n.signals.some((s) => feeds.includes(s)));
  if (!returnSignal)
    return problem({ code: 'needs', inputs: feeds.map((s) => `the signal on which ${s.name} returns`) });
  if (ambientC === undefined)
    return problem({ code: 'needs', inputs: [`limit ambient-temperature of limit set ${set.name}`] });
  if (!net)
    return problem({ code: 'needs', inputs: [`a wire of a signal that returns on ${returnSignal.name}`] });
  const circuit = circuitOfNet(
    { project: { signals: [...feeds, returnSignal], fuses: [...fuses], parts: [...parts] }, nets, mates },
    net,
    {
      conductorC: ambientC,
      warming: (wire) => {
        const may = wireAmpacity(wire, set);
        if (!may.ok || may.value.ratedC <= ambientC || may.value.currentA <= 0) return undefined;
        return { ambientC, ratedC: may.value.ratedC, ampacityA: may.value.currentA };
      },
    },
  );
  if (!circuit.ok) return circuit;
  const solution = solveNetwork(circuit.value.network);
  if (solution.ok) return ok({ circuit: circuit.value, solution: solution.value, ambientC });
  const p = solution.problem;
  return problem({
    code: 'no-solution',
    reason: networkProblemText(p),
    objects: 'ids' in p ? p.ids : p.nodes,
  });
}

function currentsOf(supply: Supply, solved: Result<SolvedSupply, CalcProblem>): SupplyCurrents {
  if (!solved.ok) {
    const netOf = new Map<ResolvedWire, Net>();
    const netAt = new Map<string, Net>();
    for (const net of supply.nets) {
      for (const w of net.wires) netOf.set(w, net);
      for (const p of net.points) netAt.set(`${p.connector.connector.id}:${p.cavity}`, net);
    }
    // Once a net: a return adds up all of its feeds, and has many wires.
    const statedIn = memoByIdentity((net: Net): KnownCurrent | undefined => {
      const known = net.signals.map((s) => statedCurrent(supply, s));
      const currentA = Math.max(...known.map((a) => a ?? -Infinity));
      return Number.isFinite(currentA) ? { currentA, basis: 'stated' } : undefined;
    });
    const stated = (net: Net | undefined): KnownCurrent | undefined => net && statedIn(net);
    return {
      solved,
      ofWire: (wire) => stated(netOf.get(wire)),
      ofMate: (mate, cavity) => stated(netAt.get(`${mate.a.resolved.connector.id}:${cavity}`)),
    };
  }
  const branches = new Map(solved.value.solution.branches.map((b) => [b.id, Math.abs(b.currentA)]));
  const at = (id: string): KnownCurrent | undefined => {
    const currentA = branches.get(id);
    return currentA === undefined ? undefined : { currentA, basis: 'solved' };
  };
  return {
    solved,
    ofWire: (wire) => at(`wire ${wire.wire.id}`),
    ofMate: (mate, cavity) => at(`mate ${mate.mate.id} ${cavity}`),
  };
}

/** What a signal states, or for a return what its feeds state together. */
export function statedCurrent(supply: Supply, signal: Signal): number | undefined {
  if (signal !== supply.returnSignal) return signal.currentA;
  let sum = 0;
  for (const feed of supply.feeds) {
    if (feed.currentA === undefined) return signal.currentA;
    sum += feed.currentA;
  }
  return sum;
}
