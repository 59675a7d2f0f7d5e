import { distance, type Box, type Point } from '../../../base/point';

/** The line shifted sideways, to the right of its direction where `byMm` is positive. Joints are mitred, at most fourfold. */
export function besides(points: readonly Point[], byMm: number): readonly Point[] {
  const n = points.length;
  return points.map((p, i) => {
    const before = i > 0 ? direction(points[i - 1] as Point, p) : null;
    const after = i < n - 1 ? direction(p, points[i + 1] as Point) : null;
    const a = before ?? after ?? { x: 1, y: 0 };
    const b = after ?? a;
    const [nx, ny] = [-(a.y + b.y), a.x + b.x];
    const d2 = nx * nx + ny * ny;
    if (d2 < 1e-9) return { x: p.x - a.y * byMm, y: p.y + a.x * byMm };
    // |n|²/2 = 1 + cos of the bend: the mitre is 1 / cos of half of it.
    const k = (2 * byMm) / Math.max(d2, 0.25);
    return { x: p.x + nx * k, y: p.y + ny * k };
  });
}

function direction(a: Point, b: Point): Point | null {
  const d = distance(a, b);
  return d === 0 ? null : { x: (b.x - a.x) / d, y: (b.y - a.y) / d };
}

/** The box around points with room on every side, mm. */
export function boxOfPoints(points: readonly Point[], roomMm = 0): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of points) {
    minX = Math.min(minX, p.x);
    minY = Math.min(minY, p.y);
    maxX = Math.max(maxX, p.x);
    maxY = Math.max(maxY, p.y);
  }
  return { minX: minX - roomMm, minY: minY - roomMm, maxX: maxX + roomMm, maxY: maxY + roomMm };
}
