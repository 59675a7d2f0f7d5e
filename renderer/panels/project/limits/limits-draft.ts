import type { Limit, LimitSet } from '@latchwork/core/model/limit-set';
import { LIMIT_IDS, TABLE_IDS, type LimitId, type TableId } from '@latchwork/core/model/limit-sets/limit-ids';

/** One line of the page: a limit, or a question that several published tables answer. */
export type LimitLine =
  | { readonly kind: 'table'; readonly id: TableId; readonly about: string }
  | { readonly kind: 'limit'; readonly id: string; readonly about: string; readonly unit: string };

const isKnown = (id: string): id is LimitId => id in LIMIT_IDS;

/** Tables first, then every limit that a rule may ask for, then those of the set that no rule of this version reads. */
export function limitLines(set: LimitSet): readonly LimitLine[] {
  const foreign = set.limits.filter((l) => !isKnown(l.id));
  return [
    ...(Object.keys(TABLE_IDS) as TableId[]).map((id): LimitLine => ({
      kind: 'table',
      id,
      about: TABLE_IDS[id].about,
    })),
    ...(Object.keys(LIMIT_IDS) as LimitId[]).map((id): LimitLine => ({
      kind: 'limit',
      id,
      about: LIMIT_IDS[id].about,
      unit: LIMIT_IDS[id].unit,
    })),
    ...foreign.map((l): LimitLine => ({
      kind: 'limit',
      id: l.id,
      about: 'No rule of this version reads it.',
      unit: l.unit,
    })),
  ];
}

export const wordsOf = (id: string): string => id.replaceAll('-', ' ');

/** What a set says on a line: the value with its unit, the name of the table; null where it says nothing. */
export function saidOf(
  set: LimitSet,
  line: LimitLine,
): { readonly value: string; readonly unit: string } | null {
  if (line.kind === 'table') {
    const table = set.tables?.find((t) => t.id === line.id)?.table;
    return table === undefined ? null : { value: table, unit: '' };
  }
  const limit = set.limits.find((l) => l.id === line.id);
  return limit ? { value: String(limit.value), unit: limit.unit } : null;
}

export const saysSame = (a: LimitSet, b: LimitSet, line: LimitLine): boolean =>
  JSON.stringify(saidOf(a, line)) === JSON.stringify(saidOf(b, line));

/** The set with one limit as given, in its place or at the end. */
export const withLimit = (set: LimitSet, limit: Limit): LimitSet => ({
  ...set,
  limits: set.limits.some((l) => l.id === limit.id)
    ? set.limits.map((l) => (l.id === limit.id ? limit : l))
    : [...set.limits, limit],
});

/** The set with that table chosen; null chooses none. */
export function withTable(set: LimitSet, id: TableId, table: string | null): LimitSet {
  const others = (set.tables ?? []).filter((t) => t.id !== id);
  return { ...set, tables: table === null ? others : [...others, { id, table }] };
}

/** One line as another set has it. Where that has nothing the draft keeps what it says. */
export function takeLine(draft: LimitSet, from: LimitSet, line: LimitLine): LimitSet {
  if (line.kind === 'table') {
    const table = from.tables?.find((t) => t.id === line.id)?.table;
    return table === undefined ? draft : withTable(draft, line.id, table);
  }
  const limit = from.limits.find((l) => l.id === line.id);
  return limit ? withLimit(draft, limit) : draft;
}
