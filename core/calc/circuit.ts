import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { COPPER_TEMPERATURE } from './data/copper';
import {
  Branch,
  Load,
  networkProblemText,
  Source,
  type Carried,
  type CarriedByBranch,
} from './network/network';
import { solveNetwork } from './network/solve-network';

export interface Circuit extends Answer {
  readonly sourceW: number;
  readonly lossW: number;
  readonly loadW: number;
  readonly lowestLoadV: number | undefined;
  /** Loads left with no voltage, or a reversed one: the supply cannot drive what they draw. */
  readonly collapsed: readonly string[];
  readonly floating: readonly string[];
  readonly nodes: readonly { readonly id: string; readonly voltageV: number }[];
  readonly branches: readonly CarriedByBranch[];
  readonly sources: readonly Carried[];
  readonly loads: readonly Carried[];
}

const KIRCHHOFF: CalcSource = { title: "nodal analysis: Ohm's and Kirchhoff's laws", verified: true };

const inputs = z.strictObject({
  sources: field(z.array(Source).min(1), 'Sources'),
  branches: field(z.array(Branch), 'Wires, contacts, splices and fuses'),
  loads: field(z.array(Load), 'Loads'),
  reference: field(z.string().optional(), 'Node of 0 V'),
});

/** A direct-current network of sources, resistive branches and loads; see `solveNetwork` for the method and its limits. */
export const circuit = calculation<typeof inputs, Circuit>({
  id: 'circuit',
  title: 'Circuit solution',
  about: 'Voltages, currents and losses of a network; conductors at their own temperature.',
  inputs,
  outputs: {
    sourceW: { label: 'Power of the sources', unit: 'W' },
    lossW: { label: 'Loss', unit: 'W' },
    loadW: { label: 'Power of the loads', unit: 'W' },
    lowestLoadV: { label: 'Lowest voltage at a load', unit: 'V' },
    collapsed: { label: 'Loads without voltage', unit: '' },
    floating: { label: 'Nodes that no source reaches', unit: '' },
    nodes: { label: 'Potential of each node', unit: 'V' },
    branches: { label: 'Branches', unit: '' },
    sources: { label: 'Sources', unit: '' },
    loads: { label: 'Loads', unit: '' },
  },
  sources: [KIRCHHOFF, COPPER_TEMPERATURE],
  run(network) {
    const solved = solveNetwork(network);
    if (!solved.ok)
      return {
        ok: false,
        problem: {
          code: 'no-solution',
          reason: networkProblemText(solved.problem),
          objects: 'ids' in solved.problem ? solved.problem.ids : solved.problem.nodes,
        },
      };
    const s = solved.value;
    const fed = s.loads.filter((l) => l.currentA !== 0);
    return answer({
      sourceW: s.sourceW,
      lossW: s.lossW,
      loadW: s.loadW,
      lowestLoadV: fed.length ? Math.min(...fed.map((l) => l.voltageV)) : undefined,
      collapsed: fed.filter((l) => l.voltageV * l.currentA <= 0).map((l) => l.id),
      floating: s.floating,
      nodes: [...s.nodeV].map(([id, voltageV]) => ({ id, voltageV })),
      branches: s.branches,
      sources: s.sources,
      loads: s.loads,
      working: {
        formula: 'sum of currents at each node = 0; V = I x R; R = R20 x (234.5 + T)/254.5',
        figures: [
          ...s.branches.map((b) => figure(b.id, b.currentA, 'A')),
          ...s.loads.map((l) => figure(l.id, l.voltageV, 'V')),
        ],
        sources: [KIRCHHOFF, COPPER_TEMPERATURE],
        notes: [`Temperatures settled in ${s.rounds} round${s.rounds === 1 ? '' : 's'}.`],
      },
    });
  },
});
