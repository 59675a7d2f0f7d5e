import { cavityLayoutOf } from '../cavity-layout';
import type { ConnectorUse } from '../harness';

/**
 * The order in which cavities are loaded so that no wire bars the way: rows inside the body before rows at its edge, of two
 * alike the lower one first, and in a row from left to right of the mating face (common practice). Cavities that the part does
 * not have come last, as they are named.
 */
export function loadingOrder({ resolved, cavities }: ConnectorUse): readonly string[] {
  const layout = resolved.part && cavityLayoutOf(resolved.part);
  const rows = layout?.rows ?? 1;
  const place = (cavity: string) => layout?.byCavity.get(cavity);
  const inside = (row: number): number => Math.min(row, rows - 1 - row);
  return cavities
    .map((c, i) => ({ cavity: c.cavity, i, at: place(c.cavity) }))
    .sort((a, b) => {
      if (!a.at || !b.at) return Number(!a.at) - Number(!b.at) || a.i - b.i;
      return (
        inside(b.at.row) - inside(a.at.row) || b.at.row - a.at.row || a.at.column - b.at.column || a.i - b.i
      );
    })
    .map((c) => c.cavity);
}
