import type { Net, ResolvedMate } from '../../derive/harness';
import { pointKey } from '../../derive/nets';
import type { Signal } from '../../model/electrical';
import type { MatingHalf } from '../../model/parts/part';

/** Two cavities that meet. */
export interface Meeting {
  readonly a: string;
  readonly b: string;
}

/** Where a mate carries a signal. */
export function carriedIn(mate: ResolvedMate, nets: readonly Net[], signal: Signal): readonly Meeting[] {
  const points = new Set(
    nets
      .filter((n) => n.signals.includes(signal))
      .flatMap((n) => n.points.map((p) => pointKey(p.connector.connector.id, p.cavity))),
  );
  return mate.map.pairs.filter(
    (p) => points.has(pointKey(mate.mate.a, p.a)) && points.has(pointKey(mate.mate.b, p.b)),
  );
}

/** One longer contact is enough to meet first. Undefined where a record that could have one says nothing. */
export function isFirstMate(a: MatingHalf, b: MatingHalf, at: Meeting): boolean | undefined {
  if (a.firstMatePositions?.includes(at.a) || b.firstMatePositions?.includes(at.b)) return true;
  return a.firstMatePositions === undefined || b.firstMatePositions === undefined ? undefined : false;
}

/** "1, 4", "none", or nothing where it is not stated. */
export const firstMateText = (half: MatingHalf): string | undefined =>
  half.firstMatePositions?.length === 0 ? 'none' : half.firstMatePositions?.join(', ');
