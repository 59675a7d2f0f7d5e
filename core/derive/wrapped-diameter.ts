import type { Covering } from '../model/topology';
import { diametersAlong } from './bundle';
import type { Harness } from './harness';

/**
 * The thickest that a covering goes round, mm: the bundle with the coverings of lower layers. Undefined where a wire's
 * diameter or a wall is not stated, or the covering lies on no segment.
 */
export function wrappedDiameterMm(
  harness: Pick<Harness, 'segments'>,
  covering: Covering,
): number | undefined {
  const diameters = harness.segments.flatMap((use) =>
    use.coverings
      .filter((c) => c.covering.id === covering.id)
      .map((c) => diametersAlong(use, c.fromMm, c.toMm, covering.layer)),
  );
  if (diameters.length === 0 || diameters.some((d) => d === undefined)) return undefined;
  return Math.max(...diameters.flatMap((d) => (d ?? []).map((s) => s.diameterMm)));
}
