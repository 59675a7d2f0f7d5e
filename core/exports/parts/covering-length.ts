import { byId } from '../../base/by-id';
import type { Harness } from '../../derive/harness';
import type { Covering } from '../../model/topology';

/**
 * Length of the run that a covering lies on, mm: along one segment from station to station, or the shortest way
 * over the nodes between two segments. Undefined when no way joins the two.
 */
export function coveringRunMm(harness: Harness, covering: Covering): number | undefined {
  const { from, to } = covering;
  if (from.segment === to.segment) return Math.abs(to.atMm - from.atMm);
  const segments = byId(harness.project.segments);
  const a = segments.get(from.segment);
  const b = segments.get(to.segment);
  if (!a || !b) return undefined;
  const ways: number[] = [];
  for (const [nodeA, restA] of [
    [a.from, from.atMm],
    [a.to, harness.router.lengthMmOf(a) - from.atMm],
  ] as const)
    for (const [nodeB, restB] of [
      [b.from, to.atMm],
      [b.to, harness.router.lengthMmOf(b) - to.atMm],
    ] as const) {
      const between = harness.router.between(nodeA, nodeB);
      if (between.found) ways.push(restA + between.lengthMm + restB);
    }
  return ways.length ? Math.min(...ways) : undefined;
}
