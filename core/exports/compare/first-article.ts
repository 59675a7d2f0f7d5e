import { compareNatural } from '../../base/stable-order';
import type { ChangeRow } from './change-row';
import type { Comparison } from './compare-projects';

/** A characteristic that the first harness of the new state is to be inspected for. */
export interface ArticleCheck {
  readonly subject: string;
  readonly check: string;
  readonly because: string;
}

/** Fields of a wire by what has to be looked at again when they change (common practice: the delta first article). */
const OF_WIRE: readonly (readonly [RegExp, string])[] = [
  [/^colour/, 'colour at both ends; records of crimps for that wire part and colour'],
  [/^(part|core)/, 'wire part and size; crimp height and pull-out force of its crimps; strip length'],
  [/^end \d, (cavity|connector|at|splice|node)/, 'position; continuity and isolation of its net'],
  [/^end \d, contact/, 'contact; crimp height and pull-out force'],
  [/^end \d, strip/, 'strip length'],
  [/^end \d, seal/, 'seal in place'],
  [/^(length|path|extra)/, 'cut length'],
  [/^group/, 'lay of the group'],
];

/** What a full first article need not be repeated for, and what of it must: computed from the changes, for people to complete. */
export function firstArticleChecks({ rows, after }: Comparison): readonly ArticleCheck[] {
  const { wireById } = after.harness;
  const checks = rows.flatMap((row): ArticleCheck[] => {
    const suggested = suggest(row);
    return suggested === null
      ? []
      : [
          {
            subject: row.subject,
            check: suggested,
            because: row.field && row.what === 'changed' ? `${row.field} changed` : row.what,
          },
        ];
  });
  const crimps = rows
    .filter((r) => r.area === 'Wires' && r.what === 'added')
    .flatMap((r) => r.objects.flatMap((o) => wireById.get(o.id) ?? []))
    .flatMap((w): ArticleCheck[] => {
      const at = [w.from, w.to].flatMap((end) =>
        end.end.at === 'cavity' && end.contactPart
          ? [
              `${end.connector?.connector.designator ?? '?'}:${end.end.cavity} (${end.contactPart.partNumber})`,
            ]
          : [],
      );
      const joints = [w.from, w.to].flatMap((end) => end.splice?.designator ?? []);
      const subject = `wire ${w.wire.designator}`;
      return [
        ...(at.length > 0 ? [`crimp height and pull-out force at ${at.join(' and ')}`] : []),
        ...joints.map((j) => `joint of splice ${j}: pull-out force and cover`),
      ].map((check) => ({ subject, check, because: 'added' }));
    });
  return distinct([...checks, ...crimps]).sort((a, b) => compareNatural(a.subject, b.subject));
}

function suggest({ area, what, field, subject }: ChangeRow): string | null {
  switch (area) {
    case 'Wires':
      if (!subject.startsWith('wire ')) return what === 'removed' ? null : 'as drawn';
      if (what === 'added') return 'cut length, colour, marking, position of both ends, continuity';
      if (what === 'removed') return 'that it is gone, and the state of its cavities';
      return OF_WIRE.find(([pattern]) => pattern.test(field))?.[1] ?? null;
    case 'Cut lengths':
      return 'cut length';
    case 'Nets':
      return 'electrical test against the new test table';
    case 'Connectors':
      if (what === 'added')
        return 'part, keying, position 1, every cavity against its pinout, locks, place on the board';
      if (what === 'removed') return 'that it is gone';
      return /^(position|rotation|place|description)/.test(field)
        ? null
        : 'part, keying, cavities against its pinout';
    case 'Mates':
      return 'that the halves mate, with the keying meant';
    case 'Topology':
      return /^(position|label)/.test(field) && !subject.startsWith('node') ? null : 'dimension on the board';
    case 'Labels':
      return what === 'removed' ? null : 'text and place of the label';
    case 'Part records':
      return what === 'added' ? 'part against its record' : what === 'changed' ? 'values of the part that changed' : null;
    case 'Fuses':
      return 'rating and place of the fuse';
    default:
      return null;
  }
} // prettier-ignore

function distinct(checks: readonly ArticleCheck[]): ArticleCheck[] {
  const seen = new Map<string, ArticleCheck>();
  for (const c of checks) if (!seen.has(`${c.subject}\n${c.check}`)) seen.set(`${c.subject}\n${c.check}`, c);
  return [...seen.values()];
}
