import type { CalcSource } from '../calc/calculation';
import type { Harness, ResolvedWire, Supply } from './harness';
import { supplyCurrents } from './supply-currents';
import { wireAmpacity } from './wire-ampacity';
import { needsOf, openFigure, workedFigure, type WorkedFigure } from './worked-figure';

const KIRCHHOFF: CalcSource = { title: "nodal analysis: Ohm's and Kirchhoff's laws", verified: true };

/** What a wire may carry, and what it does carry where a supply says so. */
export function currentFigures(harness: Harness, wire: ResolvedWire): WorkedFigure[] {
  const may = ampacityOf(harness, wire);
  return [...carried(harness, wire, may.value), may];
}

function ampacityOf({ project }: Harness, wire: ResolvedWire): WorkedFigure {
  const head = { key: 'ampacity', label: 'May carry', unit: 'A' };
  const may = wireAmpacity(wire, project.limitSet);
  if (!may.ok) return openFigure(head, needsOf(may.problem));
  const { currentA, ratedC, ambientC, basis, text, verified } = may.value;
  return workedFigure(
    head,
    currentA,
    {
      formula:
        basis === 'table' ? 'I = I(table) x ambient x altitude x bundle' : 'I = current density x area',
      figures: [
        { name: 'Ambient temperature', value: ambientC, unit: 'degC' },
        { name: 'Conductor at that current', value: ratedC, unit: 'degC' },
      ],
      sources: [{ title: text, verified }],
      notes: [`Conditions by limit set ${project.limitSet.name}.`],
    },
    basis === 'table' ? undefined : 'estimate',
  );
}

/** The largest of the currents that the supplies of the wire drive through it. */
function carried(harness: Harness, wire: ResolvedWire, mayA: number | undefined): WorkedFigure[] {
  const head = { key: 'current', label: 'Carries', unit: 'A' };
  let most: { readonly supply: Supply; readonly currentA: number; readonly solved: boolean } | undefined;
  for (const supply of harness.supplies) {
    if (!supply.wires.includes(wire)) continue;
    const known = supplyCurrents(supply, harness.project.limitSet).ofWire(wire);
    if (known && known.currentA > (most?.currentA ?? -1))
      most = { supply, currentA: known.currentA, solved: known.basis === 'solved' };
  }
  if (!most) return [];
  const feeds = most.supply.feeds.map((s) => s.name).join(', ');
  const loads = most.supply.feeds.flatMap((s) =>
    s.currentA === undefined ? [] : [{ name: `Load of ${s.name}`, value: s.currentA, unit: 'A' }],
  );
  const working = most.solved
    ? {
        formula: 'sum of currents at each node = 0; V = I x R; R = R20 x (234.5 + T)/254.5',
        figures: loads,
        sources: [KIRCHHOFF],
        notes: [`The circuit of ${feeds} with its return, solved as a network of wires, contacts and loads.`],
      }
    : {
        formula: 'I = current stated for the signal',
        figures: loads,
        sources: [{ title: 'signals of this project', verified: true }],
        notes: ['Not enough is stated to solve the circuit: the whole current is taken for every wire.'],
      };
  return [workedFigure(head, most.currentA, working, most.solved ? 'solved' : 'stated', mayA)];
}
