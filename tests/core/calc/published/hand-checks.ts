import { circuit } from '@latchwork/core/calc/circuit';
import { inrush } from '@latchwork/core/calc/inrush';
import { fuseAgainstWires } from '@latchwork/core/calc/fuse-against-wires';
import type { Branch, Load } from '@latchwork/core/calc/network/network';
import { skippedPositions } from '@latchwork/core/calc/skipped-positions';
import drops from '../../../files/reference/voltage-drop.json';
import { valueOf, type PublishedCheck } from './check';

const r = (id: string, from: string, to: string, ohm: number): Branch => ({ id, from, to, ohm });
const e = (id: string, from: string, to: string, currentA: number): Load => ({
  id,
  from,
  to,
  draws: 'current',
  currentA,
});
const solve = (voltageV: number, branches: Branch[], loads: Load[] = []) =>
  valueOf(circuit.run({ sources: [{ id: 'G', positive: 'S', negative: '0', voltageV, innerOhm: 0 }], branches, loads, reference: '0' })); // prettier-ignore
const currentIn = (s: ReturnType<typeof solve>, id: string): number =>
  s.branches.find((b) => b.id === id)!.currentA;

const byHand = (calculation: string, group: string, source: string, what: string, computed: number, published: number, unit: string): PublishedCheck => ({
  calculation, group, source, confidence: 'derived', what, computed, published, unit, allowed: { relative: 1e-9 },
}); // prettier-ignore

const bridge = solve(10, [r('a', 'S', 'M', 1), r('b', 'M', '0', 2), r('c', 'S', 'N', 2), r('d', 'N', '0', 1), r('x', 'M', 'N', 1)]); // prettier-ignore
const parallel = solve(24, [r('thin', 'S', 'L', 0.04), r('thick', 'S', 'L', 0.01)], [e('E', 'L', '0', 10)]);
const tree = solve(28, [r('T1', 'S', 'A', 0.1), r('T2', 'A', 'B', 0.1), r('b1', 'B', 'x', 0.1), r('b2', 'B', 'y', 0.1)], [e('e0', 'A', '0', 1), e('e1', 'x', '0', 2), e('e2', 'y', '0', 3)]); // prettier-ignore
const warm = valueOf(circuit.run({ sources: [{ id: 'G', positive: 'S', negative: '0', voltageV: 100, innerOhm: 0 }], branches: [{ ...r('w', 'S', 'L', 1), warming: { ambientC: 30, ratedC: 90, ampacityA: 10 } }], loads: [e('E', 'L', '0', 10)] })); // prettier-ignore

const node = 'node equations by hand';
const circuits: PublishedCheck[] = [
  byHand('circuit', 'Wheatstone bridge out of balance', node, 'current across', currentIn(bridge, 'x'), 10 / 7, 'A'),
  byHand('circuit', 'Wheatstone bridge out of balance', node, 'source current', bridge.sources[0]!.currentA, 50 / 7, 'A'),
  byHand('circuit', 'Parallel wires of unequal resistance', node, 'in the thick one', currentIn(parallel, 'thick'), 8, 'A'),
  byHand('circuit', 'Tree of splices', node, 'in the trunk', currentIn(tree, 'T1'), 6, 'A'),
  byHand('circuit', 'Tree of splices', node, 'voltage at the far load', tree.nodes.find((n) => n.id === 'y')!.voltageV, 26.6, 'V'),
  byHand('circuit', 'Wire at its own temperature', '(234.5 + T)/254.5 by hand', 'drop at 90 C', warm.branches[0]!.voltageV, (10 * 324.5) / 254.5, 'V'),
]; // prettier-ignore

/** The handbook's paths as networks of one wire. */
const faa = [...drops.FAA_11_7.rows, ...drops.FAA_11_8.rows].map((row): PublishedCheck => ({
  calculation: 'circuit', group: 'AC 43.13-1B tables 11-7 and 11-8 as networks, exact fields', source: 'FAA AC 43.13-1B, tables 11-7 and 11-8', confidence: 'published',
  what: `${row.awg} AWG, ${row.length_ft} ft`, computed: solve(28, [r('w', 'S', 'L', row.ohm_per_ft * row.length_ft)], [e('E', 'L', '0', row.I_A)]).branches[0]!.voltageV,
  published: row.VD_exact, unit: 'V', allowed: { relative: 1e-9 },
})); // prettier-ignore

const charge = valueOf(inrush.run(inrush.inputs.parse({ supplyV: 24, capacitanceUf: 1000, loopOhm: 0.1 })));
const others: PublishedCheck[] = [
  byHand('inrush', 'Capacitor behind a resistance', 'half of the energy C V2 is lost in R', 'I2t', charge.pulseA2s, (1000e-6 * 24 ** 2) / 2 / 0.1, 'A2s'),
  byHand('fuse-against-wires', 'Load of 6 A with margin 1.25', 'by hand', 'least rating', valueOf(fuseAgainstWires.run({ fuseRatedA: 10, wires: [{ id: 'w', ampacityA: 12 }], loadA: 6, loadMargin: 1.25 })).loadWithMarginA!, 7.5, 'A'),
  byHand('skipped-positions', 'One position left empty, pitch 2.54 mm, metal 0.64 mm', '(k + 1) x pitch - width', 'distance', valueOf(skippedPositions.run({ pitchMm: 2.54, contactWidthMm: 0.64, skipped: 1 })).distanceMm, 4.44, 'mm'),
]; // prettier-ignore

export const handChecks: readonly PublishedCheck[] = [...circuits, ...faa, ...others];
