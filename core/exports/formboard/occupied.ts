import { type Box, boxesMeet, type Point } from '../../base/point';

const CELL_MM = 25;
/** Cells of a column have keys in a row. Where a drawing were higher than this, cells would share keys: slower, not wrong. */
const ROWS = 2 ** 24;
const NONE: readonly Box[] = [];

/** Places on a drawing that are taken, in a grid of cells so that asking does not grow with the drawing. */
export class Occupied {
  private readonly cells = new Map<number, Box[]>();

  add(box: Box): void {
    const { fromX, toX, fromY, toY } = cellsOf(box);
    for (let x = fromX; x <= toX; x++)
      for (let y = fromY; y <= toY; y++) {
        const key = x * ROWS + y;
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
    const { fromX, toX, fromY, toY } = cellsOf(box);
    for (let x = fromX; x <= toX; x++)
      for (let y = fromY; y <= toY; y++)
        for (const taken of this.cells.get(x * ROWS + y) ?? NONE) if (boxesMeet(taken, box)) return false;
    return true;
  }
}

const mix = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

const cellsOf = ({ minX, minY, maxX, maxY }: Box) => ({
  fromX: Math.floor(minX / CELL_MM),
  toX: Math.floor(maxX / CELL_MM),
  fromY: Math.floor(minY / CELL_MM),
  toY: Math.floor(maxY / CELL_MM),
});
