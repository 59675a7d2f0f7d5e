import { drawnPath, placeOnPath, subPath, type DrawnPath, type PathPlace } from '../../calc/curve/drawn-path';
import { nearestOnPath } from '../../calc/curve/nearest-on-path';
import type { Point } from '../../base/point';
import type { Node, Segment } from '../../model/topology';

interface Made {
  readonly from: Point;
  readonly to: Point;
  readonly path: DrawnPath;
}

const made = new WeakMap<Segment, Made>();

/** The line that a segment draws between two points, through its via points. Made again only when one of them changes. */
export function pathBetween(segment: Segment, from: Point, to: Point): DrawnPath {
  const known = made.get(segment);
  if (known?.from.x === from.x && known.from.y === from.y && known.to.x === to.x && known.to.y === to.y)
    return known.path;
  const path = drawnPath([from, ...(segment.via ?? []), to], segment.shape ?? 'straight');
  made.set(segment, { from, to, path });
  return path;
}

/** The same between its nodes; undefined where one of them is not there. */
export function segmentPath(segment: Segment, nodes: ReadonlyMap<string, Node>): DrawnPath | undefined {
  const from = nodes.get(segment.from)?.position;
  const to = nodes.get(segment.to)?.position;
  return from && to && pathBetween(segment, from, to);
}

/** How long a segment is, mm. */
export interface SegmentLengths {
  readonly drawnMm: number;
  readonly typedMm: number | undefined;
  /** What routes count: the typed length, else the drawn one. */
  readonly usedMm: number;
  /** Typed less drawn; 0 where none is typed. */
  readonly differenceMm: number;
}

export function segmentLengths(segment: Segment, nodes: ReadonlyMap<string, Node>): SegmentLengths {
  const drawnMm = segmentPath(segment, nodes)?.lengthMm ?? 0;
  const typedMm = segment.lengthMm;
  return {
    drawnMm,
    typedMm,
    usedMm: typedMm ?? drawnMm,
    differenceMm: typedMm === undefined ? 0 : typedMm - drawnMm,
  };
}

/** Stations count in used millimetres; a typed length is spread evenly over the drawn line. */
const drawnPerUsed = (path: DrawnPath, usedMm: number): number => (usedMm > 0 ? path.lengthMm / usedMm : 0);

/** Where a station lies on the drawn line. */
export const placeOfStation = (path: DrawnPath, usedMm: number, atMm: number): PathPlace =>
  placeOnPath(path, Math.min(atMm, usedMm) * drawnPerUsed(path, usedMm));

/** The drawn line between two stations. */
export const pathOfStations = (path: DrawnPath, usedMm: number, fromMm: number, toMm: number): DrawnPath => {
  const scale = drawnPerUsed(path, usedMm);
  return subPath(path, Math.min(fromMm, usedMm) * scale, Math.min(toMm, usedMm) * scale);
};

/** The station nearest to a point, mm along the segment, and how far away that is on the board. */
export function stationNear(
  path: DrawnPath,
  usedMm: number,
  p: Point,
): { readonly atMm: number; readonly at: Point; readonly distanceMm: number } {
  const near = nearestOnPath(path, p);
  return { ...near, atMm: path.lengthMm > 0 ? (near.atMm / path.lengthMm) * usedMm : 0 };
}
