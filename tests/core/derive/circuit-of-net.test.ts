import { solveNetwork } from '@latchwork/core/calc/network/solve-network';
import { circuitOfNet, loadId, type CircuitConditions } from '@latchwork/core/derive/circuit-of-net';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness, Net } from '@latchwork/core/derive/harness';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { describe, expect, it } from 'vitest';

/** SUP returns on RTN; 12 V, 1 A; the wires 1 m of 50 ohm/km; contacts and header of 10 milliohm each pair. */
function circuitOf(change: (t: TinyDraft) => void = () => {}, conditions: Partial<CircuitConditions> = {}) {
  const project = tiny((t) => {
    const [sup, rtn] = t.project.signals as [
      TinyDraft['project']['signals'][0],
      TinyDraft['project']['signals'][0],
    ];
    sup.returnsOn = rtn.id;
    for (const d of ['W1', 'W2']) t.wire(d).lengthMm = 1000;
    t.part('wire', 'WIRE-22').resistanceOhmPerKm = 50;
    t.part('header', 'HEADER').resistanceMohm = 10;
    t.part('contact', 'C-PIN').resistanceMohm = 8;
    t.part('contact', 'C-SOCKET').resistanceMohm = 8;
    change(t);
  });
  const harness: Harness = deriveHarness(project);
  const net = harness.nets.find((n) => n.signals.some((s) => s.name === 'SUP')) as Net;
  return { harness, net, result: circuitOfNet(harness, net, { conductorC: 20, ...conditions }) };
}

function solved(change?: (t: TinyDraft) => void, conditions?: Partial<CircuitConditions>) {
  const { result, harness } = circuitOf(change, conditions);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  const solution = solveNetwork(result.value.network);
  if (!solution.ok) throw new Error(JSON.stringify(solution.problem));
  return { circuit: result.value, solution: solution.value, harness };
}

const needsOf = (change: (t: TinyDraft) => void): readonly string[] => {
  const { result } = circuitOf(change);
  return result.ok || result.problem.code !== 'needs' ? [] : result.problem.inputs;
};

describe('the circuit of a supply', () => {
  it('runs out and back through wires and mated contacts', () => {
    // By hand: 2 x (50 milliohm of wire + 10 at the header + 8 at X2 to X4) at 1 A = 136 mV.
    const { solution, circuit } = solved();
    expect(solution.loads[0]!.voltageV).toBeCloseTo(12 - 0.136, 9);
    expect(solution.sources[0]!.currentA).toBeCloseTo(1, 9);
    expect(circuit.notCounted).toEqual([]);
    expect(circuit.assumed).toEqual([]);
    expect([...circuit.wireOfBranch.values()].map((w) => w.wire.designator).sort()).toEqual(['W1', 'W2']);
  });

  it('is the same from its return', () => {
    const { harness } = circuitOf();
    const back = harness.nets.find((n) => n.signals.some((s) => s.name === 'RTN')) as Net;
    const result = circuitOfNet(harness, back, { conductorC: 20 });
    expect(result.ok && result.value.network.branches.length).toBe(
      circuitOf().result.ok && solved().circuit.network.branches.length,
    );
  });

  it('puts a fuse and its resistance in series', () => {
    const { solution, circuit } = solved((t) => {
      t.project.fuses.push({ id: t.newId(), designator: 'F1', wire: t.wire('W1').id, ratedA: 2 });
    });
    expect(circuit.notCounted).toEqual(['resistance of F1']);
    expect(solution.branches.find((b) => b.id.startsWith('fuse'))!.currentA).toBeCloseTo(1, 9);
  });

  it('lists the contacts whose resistance no record states', () => {
    const { circuit } = solved((t) => {
      delete t.part('header', 'HEADER').resistanceMohm;
      delete t.part('contact', 'C-SOCKET').resistanceMohm;
    });
    expect(circuit.notCounted.map((n) => n.replace(/:.*/, ''))).toEqual([
      'contact resistance, X1',
      'contact resistance, X1',
    ]);
  });

  it('takes wires at the stated temperature, or at their own', () => {
    const hot = solved(undefined, { conductorC: 85 }).solution.loads[0]!.voltageV;
    expect(12 - hot).toBeCloseTo(0.036 + (0.1 * 319.5) / 254.5, 9);
    const own = solved(undefined, { warming: () => ({ ambientC: 40, ratedC: 105, ampacityA: 2 }) }).solution;
    // rise = 65 K x (1/2)^2
    expect(own.branches.find((b) => b.temperatureC !== undefined)!.temperatureC).toBeCloseTo(56.25, 6);
  });

  it('takes a stated current of a load before the share of the signal', () => {
    const { circuit } = solved();
    const { network } = circuit;
    expect(network.loads[0]!.id).toBe(loadId(circuit.feeds[0]!, tiny().equipment[1]!.id));
    const { solution } = solved(undefined, { loadA: () => 2 });
    expect(solution.sources[0]!.currentA).toBeCloseTo(2, 9);
  });
});

describe('what is missing is named', () => {
  it.each<[string, (t: TinyDraft) => void, string]>([
    ['the return', (t) => delete t.project.signals[0]!.returnsOn, 'the signal on which SUP returns'],
    ['the voltage', (t) => delete t.project.signals[0]!.voltageV, 'voltage of SUP'],
    ['the current', (t) => delete t.project.signals[0]!.currentA, 'current of SUP'],
    ['the source', (t) => delete t.project.signals[0]!.source, 'source of SUP'],
    ['a length', (t) => { delete t.wire('W2').lengthMm; t.project.segments = []; }, 'length of W2'],
    ['the conductor', (t) => delete t.wire('W1').part, 'conductor of W1'],
    ['the load', (t) => { t.connector('X4').cavities = []; }, 'a declared position of SUP at what it feeds'],
    ['the return at the load', (t) => { t.connector('X4').cavities = t.connector('X4').cavities.filter((c) => c.cavity !== '2'); }, 'a return position for SUP at each of its ends'],
  ])('%s', (_, change, expected) => {
    expect(needsOf(change)).toContain(expected);
  }); // prettier-ignore

  it('an open return is a network without a return path, not a number', () => {
    const { result } = circuitOf((t) => {
      t.project.wires = t.project.wires.filter((w) => w.designator !== 'W2');
    });
    const solution = result.ok ? solveNetwork(result.value.network) : undefined;
    expect(solution && !solution.ok && solution.problem.code).toBe('no-return-path');
  });
});
