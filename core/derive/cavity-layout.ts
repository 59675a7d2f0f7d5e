import { memoByIdentity } from '../base/memo-by-identity';
import type { MatingHalf } from '../model/parts/part';

/** Where a cavity sits on the mating face: column from the left (halves in a shorter row), row from the top. */
export interface CavityPlace {
  readonly cavity: string;
  readonly column: number;
  readonly row: number;
}

export interface CavityLayout {
  readonly columns: number;
  readonly rows: number;
  readonly places: readonly CavityPlace[];
  readonly byCavity: ReadonlyMap<string, CavityPlace>;
  /** Fields of the part without which the layout is only assumed (drawn, but not used for a check). */
  readonly assumed: readonly ('rows' | 'numbering' | 'cavityOneCorner')[];
}

/**
 * The places of cavities 1 to `ways`, seen on the mating face. Rows fill from the first; where the ways do not
 * divide by the rows the last row is the shorter one and stands centred, as on a 9-way connector of 5 and 4.
 */
export const cavityLayoutOf = memoByIdentity((half: MatingHalf): CavityLayout => {
  const rows = Math.min(half.rows ?? 1, half.ways);
  const columns = Math.ceil(half.ways / rows);
  const numbering = half.numbering ?? 'row-wise';
  const corner = half.cavityOneCorner ?? 'top-left';
  const places: CavityPlace[] = [];
  for (let i = 0; i < half.ways; i++) {
    const zigZag = numbering === 'zig-zag';
    const row = zigZag ? i % rows : Math.floor(i / columns);
    const along = zigZag ? Math.floor(i / rows) : i % columns;
    const inRow = zigZag ? Math.ceil((half.ways - row) / rows) : Math.min(columns, half.ways - row * columns);
    const backwards = numbering === 'loop' && row % 2 === 1;
    const column = (columns - inRow) / 2 + (backwards ? inRow - 1 - along : along);
    places.push({
      cavity: String(i + 1),
      column: corner.endsWith('right') ? columns - 1 - column : column,
      row: corner.startsWith('bottom') ? rows - 1 - row : row,
    });
  }
  const assumed: CavityLayout['assumed'][number][] = [];
  if (half.rows === undefined && half.ways > 1) assumed.push('rows');
  if (half.numbering === undefined && (half.rows ?? 1) > 1) assumed.push('numbering');
  if (half.cavityOneCorner === undefined && half.ways > 1) assumed.push('cavityOneCorner');
  return { columns, rows, places, byCavity: new Map(places.map((p) => [p.cavity, p])), assumed };
});
