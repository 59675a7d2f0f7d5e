import type { Mate } from '../model/connector';
import type { Corner } from '../model/parts/mating-half';
import type { MatingHalf } from '../model/parts/part';
import { cavityLayoutOf } from './cavity-layout';

/** Which cavity of one half meets which of the other. */
export interface MateMap {
  readonly pairs: readonly { readonly a: string; readonly b: string }[];
  readonly fromA: ReadonlyMap<string, string>;
  readonly fromB: ReadonlyMap<string, string>;
  /** Typed by the user, or worked out from where the cavities sit, or not known. */
  readonly source: 'declared' | 'geometry' | 'unknown';
  /** Part fields that a map from geometry lacks. */
  readonly needs: readonly string[];
  /** Every cavity meets the one of the same number. */
  readonly isIdentity: boolean;
}

/**
 * Two mating faces look at each other, so what is left on one is right on the other: (column, row) of one half
 * meets (columns - 1 - column, row) of the other. A declared map wins.
 */
export function mateMapOf(
  mate: Pick<Mate, 'map'>,
  a: MatingHalf | undefined,
  b: MatingHalf | undefined,
): MateMap {
  if (mate.map) return mapFrom(mate.map, 'declared', []);
  if (!a || !b) return mapFrom([], 'unknown', ['part of both halves']);
  return geometryMapOf(a, b);
}

/**
 * The map that follows from the geometry alone. Where fields are not stated the source is unknown, and the pairs are
 * those of halves made to be numbered alike: good enough to draw and to follow a net, not to check.
 */
export function geometryMapOf(a: MatingHalf, b: MatingHalf): MateMap {
  const needs = [a, b].flatMap((half) =>
    cavityLayoutOf(half).assumed.map((f) => `${f} of ${half.partNumber}`),
  );
  const source = needs.length > 0 ? 'unknown' : 'geometry';
  const la = cavityLayoutOf(source === 'unknown' ? completed(a, b, 'top-left') : a);
  const lb = cavityLayoutOf(source === 'unknown' ? completed(b, a, 'top-right') : b);
  if (la.columns !== lb.columns || la.rows !== lb.rows) return mapFrom([], 'unknown', needs);
  const atB = new Map(lb.places.map((p) => [`${p.column},${p.row}`, p.cavity]));
  const pairs = la.places.flatMap((p) => {
    const other = atB.get(`${la.columns - 1 - p.column},${p.row}`);
    return other === undefined ? [] : [{ a: p.cavity, b: other }];
  });
  return mapFrom(pairs, source, needs);
}

/** A half with its blanks filled from the one that it mates with, the corner mirrored. */
function completed(half: MatingHalf, other: MatingHalf, corner: Corner): MatingHalf {
  return {
    ...half,
    rows: half.rows ?? other.rows,
    numbering: half.numbering ?? other.numbering,
    cavityOneCorner:
      half.cavityOneCorner ?? (other.cavityOneCorner ? MIRRORED[other.cavityOneCorner] : corner),
  };
}

const MIRRORED: Readonly<Record<Corner, Corner>> = {
  'top-left': 'top-right',
  'top-right': 'top-left',
  'bottom-left': 'bottom-right',
  'bottom-right': 'bottom-left',
};

function mapFrom(pairs: MateMap['pairs'], source: MateMap['source'], needs: readonly string[]): MateMap {
  return {
    pairs,
    source,
    needs,
    fromA: new Map(pairs.map((p) => [p.a, p.b])),
    fromB: new Map(pairs.map((p) => [p.b, p.a])),
    isIdentity: pairs.length > 0 && pairs.every((p) => p.a === p.b),
  };
}
