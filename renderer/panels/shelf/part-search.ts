import MiniSearch from 'minisearch';
import { memoByIdentity } from '@latchwork/core/base/memo-by-identity';
import { compareNatural } from '@latchwork/core/base/stable-order';
import { isMatingHalf, type Part } from '@latchwork/core/model/parts/part';

/** What narrows the shelf; an empty text leaves everything in. */
export interface PartFilter {
  readonly text: string;
  readonly kind: string;
  readonly family: string;
  readonly bodyForm: string;
  readonly contactKind: string;
  readonly mounting: string;
  readonly ways: string;
}

export const NO_FILTER: PartFilter = {
  text: '',
  kind: '',
  family: '',
  bodyForm: '',
  contactKind: '',
  mounting: '',
  ways: '',
};

/** Fields of a part that can be filtered by, as texts; empty where the part has none. */
export const FILTERS = {
  kind: (p: Part) => p.kind,
  family: (p: Part) => (isMatingHalf(p) ? (p.family ?? '') : p.kind === 'contact' ? (p.series ?? '') : ''),
  bodyForm: (p: Part) => (isMatingHalf(p) ? (p.bodyForm ?? '') : ''),
  contactKind: (p: Part) => (isMatingHalf(p) || p.kind === 'contact' ? (p.contactKind ?? '') : ''),
  mounting: (p: Part) => (isMatingHalf(p) ? (p.mounting ?? '') : ''),
  ways: (p: Part) => (isMatingHalf(p) ? String(p.ways) : ''),
} as const satisfies Partial<Record<keyof PartFilter, (part: Part) => string>>;
export type FilterName = keyof typeof FILTERS;

/** Part numbers break at their hyphens, so that any piece of one is found; the whole number is found too. */
const wordsOf = (text: string): string[] => {
  const whole = text.split(/[\s,;()]+/);
  return [...new Set([...whole, ...whole.flatMap((w) => w.split(/[-_/.]+/))])].filter(Boolean);
};

const indexOf = memoByIdentity((parts: readonly Part[]) => {
  const index = new MiniSearch<Part>({
    fields: ['partNumber', 'description', 'maker'],
    tokenize: wordsOf,
    searchOptions: { prefix: true, combineWith: 'AND', boost: { partNumber: 4 } },
  });
  index.addAll(parts);
  return { index, byId: new Map(parts.map((p) => [p.id, p])) };
});

const sorted = memoByIdentity((parts: readonly Part[]) =>
  [...parts].sort((a, b) => compareNatural(a.partNumber, b.partNumber)),
);

/** The parts that are left: the best matches first, or by number where nothing is searched for. */
export function findParts(parts: readonly Part[], filter: PartFilter): readonly Part[] {
  const names = (Object.keys(FILTERS) as FilterName[]).filter((name) => filter[name] !== '');
  const fits = (p: Part): boolean => names.every((name) => FILTERS[name](p) === filter[name]);
  if (filter.text.trim() === '') return sorted(parts).filter(fits);
  const { index, byId } = indexOf(parts);
  return index.search(filter.text).flatMap(({ id }) => {
    const part = byId.get(id as string);
    return part && fits(part) ? [part] : [];
  });
}

/** Values that a filter can take given the other ones, in natural order. */
export function choicesFor(parts: readonly Part[], filter: PartFilter, name: FilterName): readonly string[] {
  const others = (Object.keys(FILTERS) as FilterName[]).filter((n) => n !== name && filter[n] !== '');
  const values = new Set<string>();
  for (const p of parts) if (others.every((n) => FILTERS[n](p) === filter[n])) values.add(FILTERS[name](p));
  values.delete('');
  return [...values].sort(compareNatural);
}
