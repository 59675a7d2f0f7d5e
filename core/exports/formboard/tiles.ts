import type { Box } from '../../base/point';

/** One sheet of a large drawing. */
export interface Tile {
  /** Column letter and row number: "B3". */
  readonly name: string;
  readonly column: number;
  readonly row: number;
  /** What of the drawing it shows, overlaps included. */
  readonly area: Box;
}

export interface Tiling {
  readonly columns: number;
  readonly rows: number;
  /** Row by row. */
  readonly tiles: readonly Tile[];
}

export interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What a sheet shares with its neighbour. */
export const OVERLAP_MM = 10;

/** How much of what the sheets show beyond the drawing lies left of it and above it: 0.5 is as much as on the other side. */
export interface Spare {
  readonly left: number;
  readonly above: number;
}

/** Cuts a drawing into sheets that show `window` each and share a strip with their neighbours. */
export function tilesOf(
  drawing: Size,
  window: Size,
  overlapMm = OVERLAP_MM,
  spare: Spare = { left: 0.5, above: 0.5 },
): Tiling {
  const across = steps(drawing.widthMm, window.widthMm, overlapMm, spare.left);
  const down = steps(drawing.heightMm, window.heightMm, overlapMm, spare.above);
  const tiles = down.flatMap((top, row) =>
    across.map((left, column): Tile => ({
      name: `${columnName(column)}${row + 1}`,
      column,
      row,
      area: {
        minX: left,
        minY: top,
        maxX: left + window.widthMm,
        maxY: top + window.heightMm,
      },
    })),
  );
  return { columns: across.length, rows: down.length, tiles };
}

/** Where the sheets begin along one direction. */
function steps(lengthMm: number, windowMm: number, overlapMm: number, share: number): readonly number[] {
  const step = windowMm - overlapMm;
  if (step <= 0) throw new Error(`An overlap of ${overlapMm} mm takes the whole window of ${windowMm} mm`);
  // A drawing that ends within a hair of a sheet needs no other one.
  const count = Math.max(1, Math.ceil((lengthMm - overlapMm) / step - 1e-9));
  const spare = count * step + overlapMm - lengthMm;
  return Array.from({ length: count }, (_, i) => i * step - spare * share);
}

/** Letters without I and O, which are read as numbers; after Z comes AA. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

export function columnName(column: number): string {
  let name = '';
  for (let n = column; n >= 0; n = Math.floor(n / LETTERS.length) - 1)
    name = (LETTERS[n % LETTERS.length] as string) + name;
  return name;
}

export const tileAt = ({ tiles }: Tiling, column: number, row: number): Tile | undefined =>
  tiles.find((t) => t.column === column && t.row === row);
