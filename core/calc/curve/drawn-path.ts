import { distance, type Point } from '../../base/point';
import { cubicLengthMm, cubicParameterAt, cubicPoint, cubicVelocity, cutCubic, type Cubic } from './cubic';
import { smoothThrough } from './smooth-through';

/** A straight run, or a cubic Bézier where it has control points. */
export interface PathPiece {
  readonly from: Point;
  readonly to: Point;
  readonly control?: readonly [Point, Point];
  readonly lengthMm: number;
}

/** A line over the formboard from its start to its end, at true scale. */
export interface DrawnPath {
  readonly start: Point;
  readonly end: Point;
  /** One after the other; none has no length. */
  readonly pieces: readonly PathPiece[];
  readonly lengthMm: number;
}

/** A place on a path, and the direction in which the path runs there (radians, clockwise from right as y grows downwards). */
export interface PathPlace {
  readonly at: Point;
  readonly angle: number;
}

export const curveOf = ({ from, control, to }: PathPiece): Cubic | undefined =>
  control && [from, control[0], control[1], to];

const straight = (from: Point, to: Point): PathPiece => ({ from, to, lengthMm: distance(from, to) });

const bent = (curve: Cubic): PathPiece => ({
  from: curve[0],
  to: curve[3],
  control: [curve[1], curve[2]],
  lengthMm: cubicLengthMm(curve),
});

const joined = (pieces: readonly PathPiece[], start: Point, end: Point): DrawnPath => ({
  start,
  end,
  pieces,
  lengthMm: pieces.reduce((sum, p) => sum + p.lengthMm, 0),
});

/** Straight runs from point to point, or a smooth curve through them. Points on top of each other count once. */
export function drawnPath(points: readonly [Point, ...Point[]], shape: 'straight' | 'curve'): DrawnPath {
  const apart = points.filter((p, i) => i === 0 || distance(points[i - 1]!, p) > 1e-9);
  const pieces =
    shape === 'curve' && apart.length > 2
      ? smoothThrough(apart).map(bent)
      : apart.slice(1).map((p, i) => straight(apart[i]!, p));
  return joined(pieces, points[0], points.at(-1)!);
}

/** Where the path is after so many millimetres; its ends for what lies before or behind them. */
export function placeOnPath(path: DrawnPath, alongMm: number): PathPlace {
  let left = alongMm;
  for (const [i, piece] of path.pieces.entries()) {
    if (left <= piece.lengthMm || i === path.pieces.length - 1) return placeOnPiece(piece, left);
    left -= piece.lengthMm;
  }
  return { at: path.start, angle: 0 };
}

function placeOnPiece(piece: PathPiece, alongMm: number): PathPlace {
  const curve = curveOf(piece);
  if (!curve) {
    const t = Math.min(1, Math.max(0, alongMm / piece.lengthMm));
    const [dx, dy] = [piece.to.x - piece.from.x, piece.to.y - piece.from.y];
    return { at: { x: piece.from.x + dx * t, y: piece.from.y + dy * t }, angle: Math.atan2(dy, dx) };
  }
  const t = cubicParameterAt(curve, alongMm, piece.lengthMm);
  const v = cubicVelocity(curve, t);
  return { at: cubicPoint(curve, t), angle: Math.atan2(v.y, v.x) };
}

/** The part of a path between two places on it, mm; turned round where `fromMm` lies behind `toMm`. */
export function subPath(path: DrawnPath, fromMm: number, toMm: number): DrawnPath {
  if (fromMm > toMm) return reversePath(subPath(path, toMm, fromMm));
  const pieces: PathPiece[] = [];
  let at = 0;
  for (const piece of path.pieces) {
    const [low, high] = [Math.max(0, fromMm - at), Math.min(piece.lengthMm, toMm - at)];
    at += piece.lengthMm;
    if (high - low > 1e-9) pieces.push(partOf(piece, low, high));
  }
  const [start, end] = [placeOnPath(path, fromMm).at, placeOnPath(path, toMm).at];
  return joined(pieces, pieces[0]?.from ?? start, pieces.at(-1)?.to ?? end);
}

function partOf(piece: PathPiece, fromMm: number, toMm: number): PathPiece {
  if (fromMm <= 0 && toMm >= piece.lengthMm) return piece;
  const curve = curveOf(piece);
  if (!curve) return straight(placeOnPiece(piece, fromMm).at, placeOnPiece(piece, toMm).at);
  const low = cubicParameterAt(curve, fromMm, piece.lengthMm);
  const high = cubicParameterAt(curve, toMm, piece.lengthMm);
  const [head] = cutCubic(curve, high);
  return bent(high === 0 ? head : cutCubic(head, low / high)[1]);
}

export function reversePath({ start, end, pieces, lengthMm }: DrawnPath): DrawnPath {
  const turned = [...pieces].reverse().map((p): PathPiece => ({
    ...p,
    from: p.to,
    to: p.from,
    ...(p.control ? { control: [p.control[1], p.control[0]] } : {}),
  }));
  return { start: end, end: start, pieces: turned, lengthMm };
}
