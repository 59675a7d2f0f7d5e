import { type AnyCalculation, fieldMeta } from '@latchwork/core/calc/calculation';
import { CALC_GROUPS } from '@latchwork/core/calc/groups';
import { CALCULATIONS } from '@latchwork/core/calc/index';
import { inputFields } from '@latchwork/core/calc/read-inputs';

export interface CalcGroup {
  readonly title: string;
  readonly entries: readonly AnyCalculation[];
}

/** Everything by which a calculation may be looked for: its words, its inputs, its answers, its sources. */
const WORDS = new Map(
  CALCULATIONS.map((c) => [
    c.id,
    [
      c.id,
      c.title,
      c.about,
      ...inputFields(c).map(([, schema]) => fieldMeta(schema).label),
      ...Object.values(c.outputs).map((o) => o.label),
      ...c.sources.map((s) => s.title),
    ]
      .join(' ')
      .toLowerCase(),
  ]),
);

/** The groups, with those calculations that have all the words that were typed. */
export function searchCalculations(search: string): readonly CalcGroup[] {
  const wanted = search.toLowerCase().split(/\s+/).filter(Boolean);
  return CALC_GROUPS.flatMap(({ title, ids }) => {
    const inGroup = (ids as readonly string[]).flatMap((id) => CALCULATIONS.find((c) => c.id === id) ?? []);
    const entries = inGroup.filter((c) => {
      const words = `${title.toLowerCase()} ${WORDS.get(c.id) ?? ''}`;
      return wanted.every((w) => words.includes(w));
    });
    return entries.length ? [{ title, entries }] : [];
  });
}
