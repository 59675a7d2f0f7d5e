import { distance, type Point } from '../../../base/point';
import { placeOfStation } from '../segment-path';
import type { Datum, Dimension } from '../../../model/topology';
import type { BoardConnector, BoardDimension, BoardMeasure, BoardSegment } from './board-items';
import { boxOfPoints } from './line';

/** Distance between the lines of a baseline dimension, mm. */
const LEVEL_MM = 12;
/** Lengths that differ by less from the straight line are drawn as straight, mm. */
const STRAIGHT_MM = 0.5;
const TEXT_ROOM_MM = 8;

/** Where things of the board are, and how far apart along the harness. */
export interface DimensionGround {
  nodeAt(id: string): Point | undefined;
  segment(id: string): BoardSegment | undefined;
  connector(id: string): BoardConnector | undefined;
  /** Along the harness, mm; null where no way joins the two. */
  lengthMm(from: Datum, to: Datum): number | null;
}

export function datumPoint(d: Datum, ground: DimensionGround): Point | undefined {
  if (d.at === 'node') return ground.nodeAt(d.node);
  if (d.at === 'connector') return ground.connector(d.connector)?.at;
  const s = ground.segment(d.station.segment);
  return s && placeOfStation(s.path, s.lengthMm, d.station.atMm).at;
}

/**
 * A dimension laid out: its lines run parallel to the way from the first datum to the last, `offsetMm` beside the datum that
 * lies farthest to that side. Null where a datum is not on the board.
 */
export function dimensionItem(dimension: Dimension, ground: DimensionGround): BoardDimension | null {
  const points = dimension.datums.flatMap((d) => datumPoint(d, ground) ?? []);
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < dimension.datums.length) return null;
  const { along, away } = axesOf(first, last);
  const up = (p: Point): number => (p.x - first.x) * away.x + (p.y - first.y) * away.y;
  const { offsetMm, form, datums } = dimension;
  const far = (offsetMm < 0 ? Math.min : Math.max)(...points.map(up));
  const at = (p: Point, level: number): Point => {
    const t = (p.x - first.x) * along.x + (p.y - first.y) * along.y;
    const h = far + offsetMm + Math.sign(offsetMm || 1) * level * LEVEL_MM;
    return { x: first.x + along.x * t + away.x * h, y: first.y + along.y * t + away.y * h };
  };
  const measures: BoardMeasure[] = [];
  for (let i = 1; i < points.length; i++) {
    const start = form === 'chain' ? i - 1 : 0;
    const level = form === 'chain' ? 0 : i - 1;
    const [a, b] = [points[start] as Point, points[i] as Point];
    const valueMm = ground.lengthMm(datums[start] as Datum, datums[i] as Datum);
    const bent = valueMm !== null && Math.abs(valueMm - distance(a, b)) > STRAIGHT_MM;
    measures.push({ from: at(a, level), to: at(b, level), valueMm, bent });
  }
  const top = form === 'chain' ? 0 : points.length - 2;
  const feet = points.map((p, i) => ({ at: p, foot: at(p, form === 'chain' ? 0 : i === 0 ? top : i - 1) }));
  const reach = [...points, ...feet.map((f) => f.foot), ...measures.flatMap((m) => [m.from, m.to])];
  return { id: dimension.id, dimension, datums: feet, measures, away, ...boxOfPoints(reach, TEXT_ROOM_MM) };
}

/** Along the dimension, and to the side of a positive offset: upwards, for one that runs to the right. */
function axesOf(first: Point, last: Point): { along: Point; away: Point } {
  const d = distance(first, last);
  const along = d < 1e-6 ? { x: 1, y: 0 } : { x: (last.x - first.x) / d, y: (last.y - first.y) / d };
  return { along, away: { x: along.y, y: -along.x } };
}
