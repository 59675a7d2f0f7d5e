import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness } from '../harness';
import { FAULT_KINDS, seededFaults, type Fault, type FaultKind } from './faults';
import { firstFailing, indexSteps } from './simulate';
import { testModelOf, type TestModel } from './test-model';
import { testSteps } from './test-plan';

export interface MissedFault {
  readonly fault: Fault;
  /** Why no step can tell it. */
  readonly reason: string;
}

export interface Coverage {
  /** By kind: how many were made, and how many the test found. */
  readonly counts: Readonly<Record<FaultKind, { readonly made: number; readonly found: number }>>;
  readonly missed: readonly MissedFault[];
}

/** The test, tried on the harness with each of the seeded faults, one at a time. */
export const testCoverage = memoByIdentity((harness: Harness): Coverage => {
  const model = testModelOf(harness);
  const index = indexSteps(model, testSteps(model));
  const counts = Object.fromEntries(FAULT_KINDS.map((k) => [k, { made: 0, found: 0 }])) as Record<
    FaultKind,
    { made: number; found: number }
  >;
  const missed: MissedFault[] = [];
  for (const fault of seededFaults(harness, model)) {
    const count = counts[fault.kind];
    count.made++;
    if (firstFailing(index, fault)) count.found++;
    else missed.push({ fault, reason: reasonOf(model, fault) });
  }
  return { counts, missed };
});

function reasonOf(model: TestModel, fault: Fault): string {
  const nets = new Set(
    [...fault.moves.map((m) => m.wire.keys[0]), ...fault.bridges.flat()].flatMap(
      (key) => model.netOfKey.get(key) ?? [],
    ),
  );
  const blind = [...nets].some((i) => (model.nets[i]?.points.length ?? 0) < 2);
  if (blind) return 'the net has fewer than two points that a tester can touch';
  if (fault.kind === 'swap')
    return 'both are points of the same net: the harness connects the same points as before';
  if (fault.kind === 'open') return 'the points stay joined by another wire of the same net';
  return 'the same points are connected as before';
}
