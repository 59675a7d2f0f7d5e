import type { ConnectorUse, ResolvedMate } from '../../derive/harness';

/**
 * Pairs of cavities that meet and exist on both sides, each once. Undefined where which ones meet is only assumed: good
 * enough to draw, not to hand on.
 */
export function matedPairs({
  a,
  b,
  map,
}: ResolvedMate): readonly { readonly a: string; readonly b: string }[] | undefined {
  if (map.source === 'unknown') return undefined;
  const [hasA, hasB] = [namesOf(a), namesOf(b)];
  const seen = new Set<string>();
  return map.pairs.filter((p) => {
    const key = JSON.stringify([p.a, p.b]);
    const fits = hasA.has(p.a) && hasB.has(p.b) && !seen.has(key);
    seen.add(key);
    return fits;
  });
}

const namesOf = (use: ConnectorUse): ReadonlySet<string> =>
  new Set(use.cavities.filter((c) => c.exists).map((c) => c.cavity));
