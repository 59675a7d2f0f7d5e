import { distance, type Point } from '../../base/point';
import type { DrawnPath } from '../../calc/curve/drawn-path';
import { nearestOnPath } from '../../calc/curve/nearest-on-path';

/** The via points that lie before and behind a place on the drawn line, mm along it; one at the place itself is dropped. */
export function viasAround(
  via: readonly Point[],
  path: DrawnPath,
  cutMm: number,
): readonly [readonly Point[], readonly Point[]] {
  let along = 0;
  let k = 0;
  const at: number[] = [];
  // A piece ends at each via point that is not on top of the one before.
  for (const piece of path.pieces) {
    along += piece.lengthMm;
    while (k < via.length && distance(via[k]!, piece.to) <= 1e-9) at[k++] = along;
  }
  const places = via.map((p, i) => at[i] ?? nearestOnPath(path, p).atMm);
  return [via.filter((_, i) => places[i]! < cutMm - 1e-9), via.filter((_, i) => places[i]! > cutMm + 1e-9)];
}
