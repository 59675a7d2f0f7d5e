import type { Point } from '../../../base/point';
import { coveringThicknessMm } from '../../../calc/covering-thickness';
import { pathPoints } from '../../../calc/curve/path-points';
import { bundleOf } from '../../bundle';
import { pathBetween, pathOfStations, placeOfStation } from '../segment-path';
import type { CoveringUse, SegmentUse } from '../../harness';
import type { Segment } from '../../../model/topology';
import type { BoardCovering, BoardSegment } from './board-items';
import { boxOfPoints } from './line';

/** A segment without wires is drawn as a cord of this width, mm. */
const EMPTY_MM = 0.8;
const ASSUMED_WIRE_MM = 1.6;
const ASSUMED_WALL_MM = 0.5;

/** How far straight runs may stray from a curve, mm: less than a pixel at the nearest zoom. */
const FLAT_MM = 0.02;
/** Room around a segment for its names, mm. */
const NAME_ROOM_MM = 12;

export function segmentItem(
  segment: Segment,
  use: SegmentUse | undefined,
  from: Point,
  to: Point,
): BoardSegment {
  const path = pathBetween(segment, from, to);
  const points = pathPoints(path, FLAT_MM);
  const wires = use?.wires.length ?? 0;
  const laidMm = use ? bundleOf(use)?.laidMm : undefined;
  // A wire of unknown diameter: about the root of their number, so that a trunk still looks like one.
  const widthMm = laidMm ?? (wires === 0 ? EMPTY_MM : ASSUMED_WIRE_MM * 1.15 * Math.sqrt(wires));
  const outsideMm = Math.max(
    widthMm,
    ...(use?.coverings ?? []).map((c) => outsideOf(c, use?.coverings ?? [], widthMm)),
  );
  return {
    id: segment.id,
    segment,
    use,
    path,
    points,
    drawnMm: path.lengthMm,
    lengthMm: segment.lengthMm ?? path.lengthMm,
    widthMm,
    widthKnown: laidMm !== undefined || wires === 0,
    outsideMm,
    ...boxOfPoints(points, outsideMm / 2 + NAME_ROOM_MM),
  };
}

/** Outside of a covering: the bundle, and the walls of all layers below that lie on the same stretch. */
function outsideOf(c: CoveringUse, all: readonly CoveringUse[], widthMm: number): number {
  const under = all.filter(
    (o) => o.covering.layer <= c.covering.layer && o.fromMm < c.toMm && o.toMm > c.fromMm,
  );
  return (
    widthMm +
    2 *
      under.reduce(
        (sum, { part }) =>
          sum +
          (part?.wallMm === undefined ? ASSUMED_WALL_MM : coveringThicknessMm(part.wallMm, part.tapeOverlap)),
        0,
      )
  );
}

/** The pieces of the coverings on a segment, the innermost first. */
export function coveringItems(
  s: BoardSegment,
  uses: readonly CoveringUse[],
  longest: ReadonlyMap<string, string>,
): readonly BoardCovering[] {
  return uses.map((use) => {
    const { from, to } = use.covering;
    return {
      id: use.covering.id,
      use,
      segment: s.id,
      points: pathPoints(pathOfStations(s.path, s.lengthMm, use.fromMm, use.toMm), FLAT_MM),
      outsideMm: outsideOf(use, uses, s.widthMm),
      named: longest.get(use.covering.id) === s.id,
      ends: (['from', 'to'] as const).flatMap((end) => {
        const station = end === 'from' ? from : to;
        return station.segment === s.id ? [{ end, ...placeOfStation(s.path, s.lengthMm, station.atMm) }] : [];
      }),
    };
  });
}

/** The segment on which the longest piece of each covering lies. */
export function longestPieces(uses: readonly SegmentUse[]): ReadonlyMap<string, string> {
  const best = new Map<string, { segment: string; mm: number }>();
  for (const use of uses)
    for (const c of use.coverings) {
      const mm = c.toMm - c.fromMm;
      const was = best.get(c.covering.id);
      if (!was || mm > was.mm) best.set(c.covering.id, { segment: use.segment.id, mm });
    }
  return new Map([...best].map(([id, { segment }]) => [id, segment]));
}
