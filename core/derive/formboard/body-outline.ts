import type { MatingHalf } from '../../model/parts/part';

const ASSUMED_PITCH_MM = 3;
const ASSUMED_DEPTH_MM = 15;

/** A body seen from above with its latch on top, mm. */
export interface BodyOutline {
  /** Over the ways. */
  readonly acrossMm: number;
  /** Along the mating axis. */
  readonly alongMm: number;
  /** False where the record does not state the body and a usual one is assumed from ways and pitch. */
  readonly sizeKnown: boolean;
}

export function bodyOutline(part: MatingHalf | undefined): BodyOutline {
  const columns = part ? Math.ceil(part.ways / Math.min(part.rows ?? 1, part.ways)) : 2;
  const body = part?.body;
  return {
    alongMm: body?.lengthMm ?? ASSUMED_DEPTH_MM,
    acrossMm: body?.widthMm ?? columns * (part?.pitchMm ?? ASSUMED_PITCH_MM) + 4,
    sizeKnown: body?.lengthMm !== undefined && body.widthMm !== undefined,
  };
}
