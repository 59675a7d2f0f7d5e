import { compareNatural } from '../../base/stable-order';
import type { BuildOp, OpObject, Stage } from '../../derive/build-order/build-op';

/** Operations that are done in one go. */
export interface BuildStep {
  readonly number: number;
  readonly stage: Stage;
  readonly what: string;
  readonly ops: readonly BuildOp[];
  /** Numbers of the steps that must be done before. */
  readonly after: readonly number[];
  /** Why the step comes where it comes, each reason once. */
  readonly reasons: readonly string[];
}

/** Neighbours in the order that are alike, put together; a step never waits for itself except inside a connector. */
export function buildSteps(ops: readonly BuildOp[]): readonly BuildStep[] {
  const groups: BuildOp[][] = [];
  for (const op of ops) {
    const last = groups.at(-1);
    const head = last?.[0];
    if (last && head && head.stage === op.stage && head.gather === op.gather && head.what === op.what)
      last.push(op);
    else groups.push([op]);
  }
  const stepOf = new Map(groups.flatMap((group, i) => group.map((op) => [op.id, i + 1] as const)));
  return groups.map((group, i): BuildStep => {
    const head = group[0] as BuildOp;
    const needs = group.flatMap((op) => op.needs);
    const after = new Set(needs.flatMap((n) => stepOf.get(n.op) ?? []));
    after.delete(i + 1);
    return {
      number: i + 1,
      stage: head.stage,
      what: head.what,
      ops: group,
      after: [...after].sort((a, b) => a - b),
      reasons: [...new Set(needs.map((n) => n.because))],
    };
  });
}

/** "4 x C-1, 2 x S-1": parts that a step uses up; null where it uses none. */
export function partsText(step: BuildStep): string | null {
  const counts = new Map<string, number>();
  for (const { part, quantity } of step.ops.flatMap((op) => op.parts)) {
    const name = part ?? 'part not chosen';
    counts.set(name, (counts.get(name) ?? 0) + quantity);
  }
  const texts = [...counts].sort(([a], [b]) => compareNatural(a, b)).map(([part, n]) => `${n} x ${part}`);
  return texts.join(', ') || null;
}

/** "X1:3" for cavities, else what the operation says of its place. */
export function placesText(step: BuildStep): string {
  return step.ops.map((op) => (op.stage === 'insert' ? cavityText(op.objects) : op.place)).join(', ');
}

const cavityText = (objects: readonly OpObject[]): string => objects.map((o) => o.cavity ?? '').join(' ');

/** "1 to 4, 7": numbers as people write them. */
export function rangesText(numbers: readonly number[]): string {
  const out: string[] = [];
  for (let i = 0; i < numbers.length;) {
    let j = i;
    while (j + 1 < numbers.length && numbers[j + 1] === (numbers[j] as number) + 1) j++;
    out.push(j - i >= 2 ? `${numbers[i]} to ${numbers[j]}` : numbers.slice(i, j + 1).join(', '));
    i = j + 1;
  }
  return out.join(', ');
}
