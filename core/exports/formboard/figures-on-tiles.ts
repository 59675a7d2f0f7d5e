import type { Box } from '../../base/point';
import type { Tile, Tiling } from './tiles';

/**
 * Which figures lie on each tile, by their places in `figures` and in their order. Each figure looks for its tiles, and not
 * each tile through all figures: a long board has thousands of both.
 */
export function figuresOnTiles({ tiles }: Tiling, figures: readonly Box[]): readonly (readonly number[])[] {
  const columns = bandsOf(tiles, (t) => t.column, (t) => [t.area.minX, t.area.maxX]); // prettier-ignore
  const rows = bandsOf(tiles, (t) => t.row, (t) => [t.area.minY, t.area.maxY]); // prettier-ignore
  const onTile = tiles.map((): number[] => []);
  const placeOf = new Map(tiles.map((t, i) => [`${t.column} ${t.row}`, i]));
  figures.forEach((f, figure) => {
    const across = met(columns, f.minX, f.maxX);
    if (across.length === 0) return;
    for (const row of met(rows, f.minY, f.maxY))
      for (const column of across) {
        const place = placeOf.get(`${column} ${row}`);
        if (place !== undefined) onTile[place]?.push(figure);
      }
  });
  return onTile;
}

/** A column or row of tiles: all of one are alike in this direction. */
interface Band {
  readonly id: number;
  readonly from: number;
  readonly to: number;
}

function bandsOf(
  tiles: readonly Tile[],
  idOf: (t: Tile) => number,
  rangeOf: (t: Tile) => readonly [number, number],
): readonly Band[] {
  const bands = new Map<number, Band>();
  for (const t of tiles) {
    const id = idOf(t);
    if (bands.has(id)) continue;
    const [from, to] = rangeOf(t);
    bands.set(id, { id, from, to });
  }
  return [...bands.values()].sort((a, b) => a.from - b.from);
}

/** The bands that a stretch meets, touching included. They are of one width, so both of their ends are in order. */
function met(bands: readonly Band[], from: number, to: number): readonly number[] {
  let [low, high] = [0, bands.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((bands[middle] as Band).to < from) low = middle + 1;
    else high = middle;
  }
  const out: number[] = [];
  for (let band = bands[low]; band && band.from <= to; band = bands[++low]) out.push(band.id);
  return out;
}
