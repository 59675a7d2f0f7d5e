import { distance, type Point } from '../../../base/point';

/** Where on the line from a to b the point nearest to p lies, and how far p is from it. */
export function fromLine(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const long = dx * dx + dy * dy;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / long));
  return distance(p, { x: a.x + t * dx, y: a.y + t * dy });
}

const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Least distance of two straight lines; 0 where they cross. */
export function betweenLines(a: Point, b: Point, c: Point, d: Point): number {
  const crosses = turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
  return crosses ? 0 : Math.min(fromLine(a, c, d), fromLine(b, c, d), fromLine(c, a, b), fromLine(d, a, b));
}
