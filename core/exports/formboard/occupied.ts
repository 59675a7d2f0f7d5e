import { type Box, boxesMeet, type Point } from '../../base/point';

const CELL_MM = 25;

/** Places on a drawing that are taken, in a grid of cells so that asking does not grow with the drawing. */
export class Occupied {
  private readonly cells = new Map<string, Box[]>();

  add(box: Box): void {
    for (const key of cellsOf(box)) {
      const list = this.cells.get(key);
      if (list) list.push(box);
      else this.cells.set(key, [box]);
    }
  }

  /** A line as boxes of its own width, so that what lies beside a slanting line stays free. */
  addLine(points: readonly Point[], widthMm: number): void {
    const half = widthMm / 2;
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1] as Point, points[i] as Point];
      const parts = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 4));
      for (let k = 0; k < parts; k++) {
        const p = mix(a, b, k / parts);
        const q = mix(a, b, (k + 1) / parts);
        this.add({
          minX: Math.min(p.x, q.x) - half,
          minY: Math.min(p.y, q.y) - half,
          maxX: Math.max(p.x, q.x) + half,
          maxY: Math.max(p.y, q.y) + half,
        });
      }
    }
  }

  isFree(box: Box): boolean {
    for (const key of cellsOf(box))
      if (this.cells.get(key)?.some((taken) => boxesMeet(taken, box))) return false;
    return true;
  }
}

const mix = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

function* cellsOf({ minX, minY, maxX, maxY }: Box): Generator<string> {
  for (let x = Math.floor(minX / CELL_MM); x <= Math.floor(maxX / CELL_MM); x++)
    for (let y = Math.floor(minY / CELL_MM); y <= Math.floor(maxY / CELL_MM); y++) yield `${x} ${y}`;
}
