import { problem, ok, type Result } from '../../base/result';
import { copperFactor } from '../conductor-resistance';
import { islandsOf, type Islands } from './islands';
import { joinNodes, jointCurrents, type JoinedNodes, type Joint } from './joined-nodes';
import type { Carried, CarriedByBranch, Network, NetworkProblem, NetworkSolution } from './network';
import { addTo, factorLdl, solveLdl, sparseSymmetric } from './sparse-ldl';

/** A finite conductance between two nodes, with a voltage source in series (from negative to positive, V). */
interface Element {
  readonly from: number;
  readonly to: number;
  readonly siemens: number;
  readonly emfV: number;
}

const ROUNDS_MAX = 200;
/** Temperatures have settled when none moves more than this, K. */
const SETTLED_K = 1e-7;

/**
 * Direct-current solution of a network by nodal analysis: sources, constant-current and resistive loads, resistive
 * branches, meshes and parallel paths. Nodes joined by ideal sources or zero ohm share one unknown; the rest is a grounded
 * conductance matrix (symmetric, positive definite), factored as sparse LDL^T with one step of refinement. Branches that
 * warm are computed at their own temperature, in rounds until no temperature moves. Resistances from about 1 micro-ohm to
 * 1 giga-ohm. What has no solution is named with its ids.
 */
export function solveNetwork(network: Network): Result<NetworkSolution, NetworkProblem> {
  const twice = repeatedIds(network);
  if (twice.length) return problem({ code: 'same-id', ids: twice });
  const index = indexNodes(network);
  const at = (name: string): number => index.get(name)!;
  const joints: Joint[] = [
    ...network.branches
      .filter((b) => b.ohm === 0)
      .map((b) => ({ id: b.id, from: at(b.from), to: at(b.to), riseV: 0, isSource: false })),
    ...network.sources
      .filter((s) => s.innerOhm === 0)
      .map((s) => ({
        id: s.id,
        from: at(s.negative),
        to: at(s.positive),
        riseV: s.voltageV,
        isSource: true,
      })),
  ];
  const joined = joinNodes(index.size, joints);
  if (!joined.ok) return joined;
  const islands = islandsOf(network, index, joined.value);
  if (!islands.ok) return islands;

  const temperatures = network.branches.map((b) => b.warming?.ambientC);
  for (let round = 1; ; round++) {
    const ohms = network.branches.map((b, i) => b.ohm * (b.warming ? copperFactor(temperatures[i]!) : 1));
    const solved = solveOnce(network, index, joined.value, islands.value, ohms);
    if (!solved.ok) return solved;
    const moved: string[] = [];
    network.branches.forEach((b, i) => {
      if (!b.warming) return;
      const { from, to } = b;
      const currentA = b.ohm === 0 ? 0 : (solved.value[at(from)]! - solved.value[at(to)]!) / ohms[i]!;
      const w = b.warming;
      const next = w.ambientC + (w.ratedC - w.ambientC) * (currentA / w.ampacityA) ** 2;
      if (!(Math.abs(next - temperatures[i]!) <= SETTLED_K * (1 + Math.abs(next) / 100))) moved.push(b.id);
      temperatures[i] = next;
    });
    if (moved.length === 0)
      return ok(results(network, index, joints, islands.value, ohms, temperatures, solved.value, round));
    if (round === ROUNDS_MAX || temperatures.some((t) => t !== undefined && !(t < 1e4)))
      return problem({ code: 'runaway', ids: moved });
  }
}

/** Potential of every node at given branch resistances; NaN for nodes that nothing fixes. */
function solveOnce(
  network: Network,
  index: ReadonlyMap<string, number>,
  joined: JoinedNodes,
  islands: Islands,
  ohms: readonly number[],
): Result<Float64Array, NetworkProblem> {
  const at = (name: string): number => index.get(name)!;
  const { root, offsetV } = joined;
  const count = root.length;
  const potential = new Float64Array(count).fill(NaN);
  // Unknowns: roots, except those that hold an island's ground and those of islands without one.
  const unknown = new Int32Array(count).fill(-1);
  let size = 0;
  for (const { ground } of islands.list)
    if (ground !== undefined) potential[root[ground]!] = -offsetV[ground]!;
  for (let i = 0; i < count; i++)
    if (root[i] === i && Number.isNaN(potential[i]!) && islands.list[islands.of[i]!]!.ground !== undefined)
      unknown[i] = size++;
  const elements = elementsOf(network, at, ohms).filter(
    (e) => islands.list[islands.of[e.from]!]!.ground !== undefined,
  );
  const matrix = sparseSymmetric(size);
  for (const e of elements) {
    const a = unknown[root[e.from]!]!;
    const b = unknown[root[e.to]!]!;
    if (a === b) continue;
    if (a >= 0) addTo(matrix, a, a, e.siemens);
    if (b >= 0) addTo(matrix, b, b, e.siemens);
    if (a >= 0 && b >= 0) addTo(matrix, a, b, -e.siemens);
  }
  const factors = factorLdl(matrix);
  const rootOf = new Int32Array(size);
  for (let i = 0; i < count; i++) if (unknown[i]! >= 0) rootOf[unknown[i]!] = i;
  if ('singularRow' in factors) {
    const blamed = rootOf[factors.singularRow]!;
    return problem({
      code: 'singular',
      nodes: [...index].filter(([, i]) => root[i] === blamed).map(([n]) => n),
    });
  }
  // The matrix times the unknowns equals what is left of Kirchhoff's current law with the unknowns at zero; the same
  // step again with the unknowns found takes out the rounding of the first.
  for (let i = 0; i < size; i++) potential[rootOf[i]!] = 0;
  for (let pass = 0; pass < 2; pass++) {
    const into = new Float64Array(size);
    const add = (node: number, currentA: number): void => {
      const k = unknown[root[node]!]!;
      if (k >= 0) into[k]! += currentA;
    };
    for (const e of elements) {
      const i = elementCurrent(
        e,
        potential[root[e.from]!]! + offsetV[e.from]!,
        potential[root[e.to]!]! + offsetV[e.to]!,
      );
      add(e.from, -i);
      add(e.to, i);
    }
    for (const l of network.loads)
      if (l.draws === 'current') {
        add(at(l.from), -l.currentA);
        add(at(l.to), l.currentA);
      }
    const step = solveLdl(factors, into);
    for (let i = 0; i < size; i++) potential[rootOf[i]!]! += step[i]!;
  }
  return ok(Float64Array.from({ length: count }, (_, i) => potential[root[i]!]! + offsetV[i]!));
}

function elementsOf(network: Network, at: (name: string) => number, ohms: readonly number[]): Element[] {
  const out: Element[] = [];
  network.branches.forEach((b, i) => {
    if (b.ohm > 0) out.push({ from: at(b.from), to: at(b.to), siemens: 1 / ohms[i]!, emfV: 0 });
  });
  for (const s of network.sources)
    if (s.innerOhm > 0)
      out.push({ from: at(s.negative), to: at(s.positive), siemens: 1 / s.innerOhm, emfV: s.voltageV });
  for (const l of network.loads)
    if (l.draws === 'resistance') out.push({ from: at(l.from), to: at(l.to), siemens: 1 / l.ohm, emfV: 0 });
  return out;
}

const elementCurrent = (e: Element, fromV: number, toV: number): number => e.siemens * (fromV - toV + e.emfV);

function results(
  network: Network,
  index: ReadonlyMap<string, number>,
  joints: readonly Joint[],
  islands: Islands,
  ohms: readonly number[],
  temperatures: readonly (number | undefined)[],
  potential: Float64Array,
  rounds: number,
): NetworkSolution {
  const at = (name: string): number => index.get(name)!;
  const floats = (node: number): boolean => islands.list[islands.of[node]!]!.ground === undefined;
  const across = (from: string, to: string): number =>
    floats(at(from)) ? 0 : potential[at(from)]! - potential[at(to)]!;
  const leaving = new Float64Array(index.size);
  const flow = (from: string, to: string, currentA: number): number => {
    leaving[at(from)]! += currentA;
    leaving[at(to)]! -= currentA;
    return currentA;
  };
  const loads: Carried[] = network.loads.map((l) => {
    const voltageV = across(l.from, l.to);
    const currentA = flow(l.from, l.to, l.draws === 'current' ? l.currentA : voltageV / l.ohm);
    return { id: l.id, currentA, voltageV, powerW: currentA * voltageV };
  });
  const resistive = network.branches.map((b, i) =>
    b.ohm > 0 ? flow(b.from, b.to, across(b.from, b.to) / ohms[i]!) : 0,
  );
  const behindOhm = network.sources.map((s) =>
    s.innerOhm > 0
      ? flow(s.negative, s.positive, (s.voltageV - across(s.positive, s.negative)) / s.innerOhm)
      : 0,
  );
  const inJoints = jointCurrents(index.size, joints, leaving);
  const jointOf = new Map(joints.map((j, k) => [`${j.isSource} ${j.id}`, inJoints[k]!]));
  const branches: CarriedByBranch[] = network.branches.map((b, i) => {
    const currentA = b.ohm > 0 ? resistive[i]! : (jointOf.get(`false ${b.id}`) ?? 0);
    const voltageV = b.ohm > 0 ? across(b.from, b.to) : 0;
    return {
      id: b.id,
      currentA,
      voltageV,
      powerW: currentA * voltageV,
      ohm: ohms[i]!,
      temperatureC: temperatures[i],
    };
  });
  let sourceW = 0;
  let lossW = branches.reduce((sum, b) => sum + b.powerW, 0);
  const sources: Carried[] = network.sources.map((s, i) => {
    const currentA = s.innerOhm > 0 ? behindOhm[i]! : (jointOf.get(`true ${s.id}`) ?? 0);
    const voltageV = across(s.positive, s.negative);
    sourceW += s.voltageV * currentA;
    lossW += s.innerOhm * currentA ** 2;
    return { id: s.id, currentA, voltageV, powerW: currentA * voltageV };
  });
  return {
    nodeV: new Map([...index].filter(([, i]) => !floats(i)).map(([name, i]) => [name, potential[i]!])),
    branches,
    sources,
    loads,
    floating: [...index].filter(([, i]) => floats(i)).map(([name]) => name),
    sourceW,
    lossW,
    loadW: loads.reduce((sum, l) => sum + l.powerW, 0),
    rounds,
  };
}

function indexNodes(network: Network): ReadonlyMap<string, number> {
  const index = new Map<string, number>();
  const add = (name: string): void => void (index.has(name) || index.set(name, index.size));
  if (network.reference !== undefined) add(network.reference);
  for (const s of network.sources) [s.negative, s.positive].forEach(add);
  for (const b of network.branches) [b.from, b.to].forEach(add);
  for (const l of network.loads) [l.from, l.to].forEach(add);
  return index;
}

function repeatedIds(network: Network): string[] {
  return [network.branches, network.sources, network.loads].flatMap((list) => {
    const seen = new Set<string>();
    return list.map((x) => x.id).filter((id) => seen.has(id) || !seen.add(id));
  });
}
