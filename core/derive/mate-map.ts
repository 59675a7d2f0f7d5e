import type { Mate } from '../model/connector';
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

/** The map that follows from the geometry alone. */
export function geometryMapOf(a: MatingHalf, b: MatingHalf): MateMap {
  const la = cavityLayoutOf(a);
  const lb = cavityLayoutOf(b);
  const needs = [
    ...la.assumed.map((f) => `${f} of ${a.partNumber}`),
    ...lb.assumed.map((f) => `${f} of ${b.partNumber}`),
  ];
  if (la.columns !== lb.columns || la.rows !== lb.rows) return mapFrom([], 'unknown', needs);
  const atB = new Map(lb.places.map((p) => [`${p.column},${p.row}`, p.cavity]));
  const pairs = la.places.flatMap((p) => {
    const other = atB.get(`${la.columns - 1 - p.column},${p.row}`);
    return other === undefined ? [] : [{ a: p.cavity, b: other }];
  });
  return mapFrom(pairs, needs.length ? 'unknown' : 'geometry', needs);
}

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
