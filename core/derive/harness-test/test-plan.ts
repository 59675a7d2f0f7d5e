import type { TestModel, TestNet, TestPoint } from './test-model';

/**
 * A step of the test. Continuity: two points of a net are joined. Isolation: a net, driven at one point, is joined to no point
 * outside it. Unwired: a position without a wire is joined to nothing.
 */
export type TestStep =
  | { readonly kind: 'continuity'; readonly net: number; readonly from: TestPoint; readonly to: TestPoint }
  | { readonly kind: 'isolation'; readonly net: number; readonly from: TestPoint }
  | { readonly kind: 'unwired'; readonly from: TestPoint };

/** Continuity from the first point of each net to every other one, then each net against all that is not of it. */
export function testSteps({ nets, unwired }: TestModel): readonly TestStep[] {
  const each = (of: (net: TestNet, index: number, first: TestPoint) => TestStep[]): TestStep[] =>
    nets.flatMap((net, i) => (net.points[0] ? of(net, i, net.points[0]) : []));
  return [
    ...each((net, index, first) =>
      net.points.slice(1).map((to): TestStep => ({ kind: 'continuity', net: index, from: first, to })),
    ),
    ...each((_, index, first) => [{ kind: 'isolation', net: index, from: first }]),
    ...unwired.map((from): TestStep => ({ kind: 'unwired', from })),
  ];
}
