import type { Limit, LimitSet } from '../limit-set';

/** A limit, or a choice of table, that two sets answer differently; undefined where one of them has none. */
export interface LimitDifference {
  readonly id: string;
  readonly kind: 'limit' | 'table';
  readonly before: string | undefined;
  readonly after: string | undefined;
  readonly sourceBefore: string | undefined;
  readonly sourceAfter: string | undefined;
}

/** What differs between two sets in value, unit or table, in the order of the first, then of the second. Sources alone do not count. */
export function compareLimitSets(before: LimitSet, after: LimitSet): readonly LimitDifference[] {
  const ids = <T extends { readonly id: string }>(a: readonly T[], b: readonly T[]): readonly string[] => [
    ...new Set([...a, ...b].map((x) => x.id)),
  ];
  const limits = ids(before.limits, after.limits).map((id): LimitDifference => {
    const a = before.limits.find((l) => l.id === id);
    const b = after.limits.find((l) => l.id === id);
    return {
      id,
      kind: 'limit',
      before: a && amountOf(a),
      after: b && amountOf(b),
      sourceBefore: a?.source,
      sourceAfter: b?.source,
    };
  });
  const [tablesBefore, tablesAfter] = [before.tables ?? [], after.tables ?? []];
  const tables = ids(tablesBefore, tablesAfter).map((id): LimitDifference => ({
    id,
    kind: 'table',
    before: tablesBefore.find((t) => t.id === id)?.table,
    after: tablesAfter.find((t) => t.id === id)?.table,
    sourceBefore: undefined,
    sourceAfter: undefined,
  }));
  return [...limits, ...tables].filter((d) => d.before !== d.after);
}

const amountOf = (l: Limit): string => (l.unit ? `${l.value} ${l.unit}` : String(l.value));
