import { compareNatural } from '../base/stable-order';
import type { Part } from '../model/parts/part';
import { tiny, type TinyDraft } from '../model/tiny';
import { partRef } from './refs';
import type { Rule } from './rule';
import { fact } from './shared/evidence';

/**
 * Speaks where a catalogue that is open has the record in a later revision than the one that the project embeds. Without
 * that catalogue nothing is said: the project stands on its own.
 */
export const partChanged: Rule<'part'> = {
  meta: {
    id: 'part-changed',
    revision: 1,
    severity: 'minor',
    summary: 'The records in the project say what the catalogue says today.',
    why: 'The design was checked against values that its maker or the library has since corrected.',
    source: 'common practice: a design names the revision of the data it was made from',
    message: '{{part}} is from revision {{mine}} of {{catalogue}}, revision {{theirs}} differs in {{fields}}',
    unknown: 'Whether the record of {{part}} is up to date cannot be verified; not stated: {{needs}}',
  },
  scope: 'part',
  check(part, report, context) {
    const now = context.catalogueRecord(part);
    const [mine, theirs] = [part.catalogue, now?.catalogue];
    if (!now || !mine || !theirs || mine.name !== theirs.name) return;
    const fields = compareNatural(theirs.revision, mine.revision) > 0 ? changedFields(part, now) : [];
    if (fields.length === 0) return report.pass();
    report.fail({
      at: [partRef(part)],
      data: {
        part: part.partNumber,
        catalogue: mine.name,
        mine: mine.revision,
        theirs: theirs.revision,
        fields: fields.join(', '),
      },
      evidence: [
        ...fact('revision of the record', mine.revision, 'project'),
        ...fact('revision of the catalogue', theirs.revision, `catalogue ${theirs.name}`),
        ...fields.flatMap((f) => [
          ...fact(`${f} in the project`, valueText(part, f), 'project'),
          ...fact(`${f} in the catalogue`, valueText(now, f), `catalogue ${theirs.name} ${theirs.revision}`),
        ]),
      ],
      ...(now.kind === part.kind
        ? {
            fix: {
              label: `Take ${part.partNumber} from revision ${theirs.revision}`,
              command: 'part.embed',
              args: { part: now },
            },
          }
        : {}),
    });
  },
  examples: () => ({
    good: [
      { name: 'no catalogue open', project: tiny() },
      { name: 'the same revision', project: tiny(), catalogue: revised('1', { cycles: 10 }) },
      { name: 'a later revision, the record as it was', project: tiny(), catalogue: revised('2', {}) },
      {
        name: 'the catalogue is the older one',
        project: tiny((t) => (contactOf(t).catalogue = { name: 'Example parts', revision: '10' })),
        catalogue: revised('9', { cycles: 10 }),
      },
      {
        name: 'a record that was typed in the project',
        project: tiny((t) => delete contactOf(t).catalogue),
        catalogue: revised('2', { cycles: 10 }),
      },
    ],
    bad: [
      {
        name: 'fewer cycles in the later revision',
        project: tiny(),
        catalogue: revised('2', { cycles: 10 }),
        expect: ['C-PIN'],
      },
    ],
    unknown: [],
  }),
};

/** What any later revision differs in is of no interest. */
const IGNORED: ReadonlySet<string> = new Set(['id', 'catalogue', 'source']);

function changedFields(a: Part, b: Part): string[] {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].filter((k) => !IGNORED.has(k) && text(field(a, k)) !== text(field(b, k))).sort();
}

const field = (part: Part, key: string): unknown => (part as unknown as Record<string, unknown>)[key];

/** Records come from files that are written in one order of keys, but a catalogue may be edited by hand. */
const text = (value: unknown): string =>
  JSON.stringify(value, (_key, v: unknown) =>
    typeof v === 'object' && v !== null && !Array.isArray(v)
      ? Object.fromEntries(Object.entries(v).sort(([x], [y]) => (x < y ? -1 : 1)))
      : v,
  ) ?? '';

const LONGEST = 60;

function valueText(part: Part, key: string): string {
  const value = field(part, key);
  if (value === undefined) return 'not stated';
  const all = typeof value === 'string' ? value : text(value);
  return all.length > LONGEST ? `${all.slice(0, LONGEST)} …` : all;
}

const contactOf = (t: TinyDraft) => t.part('contact', 'C-PIN');

/** The example catalogue in that revision, its pin contact changed. */
const revised = (revision: string, change: object): readonly Part[] =>
  tiny().parts.map((p) => ({
    ...p,
    catalogue: { name: 'Example parts', revision },
    ...(p.partNumber === 'C-PIN' ? change : {}),
  }));
