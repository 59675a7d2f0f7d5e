import type { z } from 'zod';
import type { CurrentRating as Schema } from '../model/parts/mating-half';

type CurrentRating = z.infer<typeof Schema>;

/** The rating that applies, and what it leaves open. */
export interface ContactRating {
  readonly currentA: number;
  readonly rating: CurrentRating;
  /** Conditions that the record does not state. */
  readonly notStated: readonly ('loadedWays' | 'areaMm2')[];
}

/**
 * The current rating of a housing for this many loaded ways and this conductor. A rating holds for its conditions and for
 * milder ones (fewer loaded ways, a thicker conductor); of those that hold, the one that states most counts, then the
 * highest. Undefined: every rating is for milder conditions than these, or the conductor is not known to one that needs it.
 */
export function contactRating(
  ratings: readonly CurrentRating[],
  loadedWays: number,
  areaMm2: number | undefined,
): ContactRating | undefined {
  const holds = ratings.filter(
    (r) =>
      (r.loadedWays === undefined || r.loadedWays >= loadedWays) &&
      (r.areaMm2 === undefined || (areaMm2 !== undefined && areaMm2 >= r.areaMm2 - 1e-9)),
  );
  const stated = (r: CurrentRating): number =>
    Number(r.loadedWays !== undefined) + Number(r.areaMm2 !== undefined);
  // A bare figure says nothing against a stricter one: where a rating states conditions, the bare one is out.
  const strictest = Math.max(...ratings.map(stated), 0);
  const best = holds
    .filter((r) => stated(r) > 0 || strictest === 0)
    .sort((a, b) => stated(b) - stated(a) || b.currentA - a.currentA)[0];
  return (
    best && {
      currentA: best.currentA,
      rating: best,
      notStated: (['loadedWays', 'areaMm2'] as const).filter((key) => best[key] === undefined),
    }
  );
}
