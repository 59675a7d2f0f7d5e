import { byId } from '../../base/by-id';
import { tapeLengthMm } from '../../calc/tape-length';
import { coveringExtents } from '../../derive/covering-extents';
import type { Harness } from '../../derive/harness';
import { wrappedDiameterMm } from '../../derive/wrapped-diameter';
import type { CoveringPart } from '../../model/parts/accessories';
import type { Covering } from '../../model/topology';

/** How much of a covering has to be bought, mm; undefined where it cannot be told, with what it needs. */
export interface CoveringNeed {
  readonly lengthMm: number | undefined;
  readonly remark?: string;
}

/** Tape by its helix round the bundle, everything else by the run and what it loses in length. */
export function coveringNeed(
  harness: Harness,
  covering: Covering,
  part: CoveringPart | undefined,
): CoveringNeed {
  const runMm = coveringRunMm(harness, covering);
  if (runMm === undefined || part?.form !== 'tape')
    return { lengthMm: runMm === undefined ? undefined : runMm * (1 + (part?.takeUp ?? 0)) };
  const diameterMm = wrappedDiameterMm(harness, covering);
  const { tapeWidthMm: widthMm, tapeOverlap: overlap } = part;
  const needs = [
    ...(diameterMm === undefined ? ['the diameter of the bundle'] : []),
    ...(widthMm === undefined ? ['the width of the tape'] : []),
    ...(overlap === undefined ? ['the overlap'] : []),
  ];
  if (diameterMm === undefined || widthMm === undefined || overlap === undefined)
    return { lengthMm: undefined, remark: `length of the tape not known: needs ${needs.join(', ')}` };
  return { lengthMm: tapeLengthMm({ diameterMm, lengthMm: runMm, widthMm, overlap }) };
}

/** Length of the run that a covering lies on, mm. Undefined when no way joins its two stations. */
export function coveringRunMm(harness: Harness, covering: Covering): number | undefined {
  const extents = coveringExtents(covering, byId(harness.project.segments), harness.router);
  return extents.length > 0 ? extents.reduce((sum, e) => sum + e.toMm - e.fromMm, 0) : undefined;
}
