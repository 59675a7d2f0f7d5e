import type { CoveringUse, SegmentUse } from '@latchwork/core/derive/harness';

/** A length of a segment over which the same coverings lie, the innermost first. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
  readonly coverings: readonly CoveringUse[];
}

/** The segment from end to end, cut where a covering begins or ends. */
export function stretchesOf({ lengthMm, coverings }: SegmentUse): readonly Stretch[] {
  const edges = [0, lengthMm, ...coverings.flatMap((c) => [c.fromMm, c.toMm])]
    .filter((mm) => mm >= 0 && mm <= lengthMm)
    .sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let i = 1; i < edges.length; i++) {
    const [fromMm, toMm] = [edges[i - 1] as number, edges[i] as number];
    if (toMm - fromMm <= 1e-6) continue;
    stretches.push({
      fromMm,
      toMm,
      coverings: coverings.filter((c) => c.fromMm <= fromMm && c.toMm >= toMm),
    });
  }
  return stretches.length > 0 ? stretches : [{ fromMm: 0, toMm: lengthMm, coverings: [] }];
}
