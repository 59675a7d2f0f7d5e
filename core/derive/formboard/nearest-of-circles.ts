import { distance, type Point } from '../../base/point';

export interface Circle {
  readonly centre: Point;
  readonly radius: number;
}

const HAIR = 1e-6;

/**
 * The point on all circles that lies nearest to `wanted`. Given that the origin lies on all of them, which is the answer
 * where nothing else does.
 */
export function nearestOfCircles([first, ...rest]: readonly Circle[], wanted: Point): Point {
  if (!first) return wanted;
  const second = rest.find((c) => distance(c.centre, first.centre) > HAIR);
  if (!second) return onto(first, wanted);
  // The second point in which two circles meet is the first one mirrored about the line through their centres.
  const [dx, dy] = [second.centre.x - first.centre.x, second.centre.y - first.centre.y];
  const along = -(first.centre.x * dx + first.centre.y * dy) / (dx * dx + dy * dy);
  const foot = { x: first.centre.x + along * dx, y: first.centre.y + along * dy };
  const mirrored = { x: 2 * foot.x, y: 2 * foot.y };
  const onAll = rest.every((c) => Math.abs(distance(c.centre, mirrored) - c.radius) < HAIR);
  const origin = { x: 0, y: 0 };
  return onAll && distance(mirrored, wanted) < distance(origin, wanted) ? mirrored : origin;
}

function onto({ centre, radius }: Circle, wanted: Point): Point {
  const far = distance(centre, wanted);
  if (far < HAIR) return { x: 0, y: 0 };
  return {
    x: centre.x + ((wanted.x - centre.x) * radius) / far,
    y: centre.y + ((wanted.y - centre.y) * radius) / far,
  };
}
