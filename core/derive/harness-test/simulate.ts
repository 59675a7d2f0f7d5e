import type { Fault } from './faults';
import { rootsOf, type TestModel, type TestWire } from './test-model';
import type { TestStep } from './test-plan';

/** Steps by what they look at, so that a fault is tried on those alone that can tell it. */
export interface StepIndex {
  readonly model: TestModel;
  readonly ofNet: ReadonlyMap<number, readonly TestStep[]>;
  readonly ofUnwired: ReadonlyMap<string, TestStep>;
}

export function indexSteps(model: TestModel, steps: readonly TestStep[]): StepIndex {
  const ofNet = new Map<number, TestStep[]>();
  const ofUnwired = new Map<string, TestStep>();
  for (const step of steps) {
    if (step.kind === 'unwired') ofUnwired.set(step.from.key, step);
    else ofNet.set(step.net, [...(ofNet.get(step.net) ?? []), step]);
  }
  return { model, ofNet, ofUnwired };
}

/**
 * Runs the test on a harness with a fault, and gives the first step that fails. Only the nets that the fault touches are
 * built again: all others are as they were, joined to none of these, and their steps pass as before. With `whole` every net is
 * built and every step run.
 */
export function firstFailing(index: StepIndex, fault: Fault, whole = false): TestStep | undefined {
  const { model } = index;
  const touched = whole ? new Set(model.nets.keys()) : touchedNets(model, fault);
  const moved = new Map<TestWire, [string, string]>();
  fault.moves.forEach(({ wire, end, to }, i) => {
    const keys = moved.get(wire) ?? [...wire.keys];
    keys[end] = to ?? `nowhere ${i}`;
    moved.set(wire, keys as [string, string]);
  });
  const edges: { keys: readonly [string, string] }[] = fault.bridges.map((keys) => ({ keys }));
  for (const i of touched)
    for (const wire of model.nets[i]!.wires) edges.push({ keys: moved.get(wire) ?? wire.keys });
  const root = rootsOf(edges);

  const keys = [...touched].flatMap((i) => model.nets[i]!.points.map((p) => ({ net: i, key: p.key })));
  const stray = whole
    ? model.unwired.map((p) => p.key)
    : fault.moves.flatMap((m) => (m.to !== null && index.ofUnwired.has(m.to) ? [m.to] : []));
  const fails = (step: TestStep): boolean => {
    if (step.kind === 'continuity') return root(step.from.key) !== root(step.to.key);
    const own = root(step.from.key);
    const net = step.kind === 'isolation' ? step.net : -1;
    if (keys.some((p) => p.net !== net && root(p.key) === own)) return true;
    return stray.some((key) => key !== step.from.key && root(key) === own);
  };
  for (const i of touched) {
    const failing = index.ofNet.get(i)?.find(fails);
    if (failing) return failing;
  }
  return stray.map((key) => index.ofUnwired.get(key)).find((step) => step !== undefined && fails(step));
}

function touchedNets({ netOfKey }: TestModel, fault: Fault): Set<number> {
  const out = new Set<number>();
  const put = (key: string | null): void => {
    const net = key === null ? undefined : netOfKey.get(key);
    if (net !== undefined) out.add(net);
  };
  for (const m of fault.moves) {
    put(m.wire.keys[0]);
    put(m.to);
  }
  for (const bridge of fault.bridges) for (const key of bridge) put(key);
  return out;
}
