import type { ConnectorUse } from '../derive/harness';
import type { ContactPart } from '../model/parts/contact';
import type { MatingHalf } from '../model/parts/part';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Need } from './finding';
import type { Rule } from './rule';
import { fact, limitFact, limitNeed, partFact, partNeed } from './shared/evidence';
import { setLimit } from './shared/example-route';
import { mateSides } from './shared/mate-sides';

const TESTS = 'test-matings';

/**
 * Speaks of mates of which a half states how often it will be plugged. A half has the cycles of its body and of the
 * contacts in it, whichever are fewer; one statement for a half is enough.
 */
export const mateCycles: Rule<'mate'> = {
  meta: {
    id: 'mate-cycles',
    revision: 1,
    severity: 'major',
    summary:
      'A connector is not mated more often, tests included, than its halves and contacts are rated for.',
    why: 'Each mating wears the plating; once it is through, the base metal corrodes and the contact resistance climbs.',
    source:
      'common practice: planned and test matings together within the rated cycles, else a connector saver',
    message:
      '{{a}} and {{b}} are to be mated {{planned}} times with tests, {{weakest}} is rated for {{rated}}',
    unknown: 'Whether {{a}} and {{b}} stand their matings cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check(mate, report, context) {
    const sides = mateSides(mate);
    const stated = [mate.a, mate.b].flatMap((use) => {
      const { plannedCycles, designator } = use.resolved.connector;
      return plannedCycles === undefined ? [] : [{ use, designator, planned: plannedCycles }];
    });
    if (!sides || stated.length === 0) return;
    const tests = context.limit(TESTS);
    const planned = Math.max(...stated.map((s) => s.planned)) + (tests?.value ?? 0);
    const halves = [mate.a, mate.b].map(partsOf);
    const rated = halves.flat().flatMap((part) => (part.cycles === undefined ? [] : [part]));
    const common = {
      at: sides.at,
      evidence: [
        ...stated.flatMap((s) => fact(`matings planned for ${s.designator}`, s.planned, 'typed')),
        ...limitFact('matings for test', tests, context.limitSet),
        ...rated.flatMap((p) => partFact(p, `cycles of ${p.partNumber}`, p.cycles)),
      ],
    };
    const weakest = rated.reduce<MatingHalf | ContactPart | undefined>(
      (a, b) => (a === undefined || (b.cycles ?? 0) < (a.cycles ?? 0) ? b : a),
      undefined,
    );
    if (weakest?.cycles !== undefined && planned > weakest.cycles) {
      const data = { ...sides.names, planned, weakest: weakest.partNumber, rated: weakest.cycles };
      return report.fail({ ...common, data });
    }
    const needs: Need[] = [
      ...[mate.a, mate.b].flatMap(({ resolved: { part } }, i) =>
        part && halves[i]?.every((p) => p.cycles === undefined) ? [partNeed(part, 'cycles', 'cycles')] : [],
      ),
      ...(tests ? [] : [limitNeed(TESTS, context.limitSet)]),
    ];
    if (needs.length > 0) report.cannotVerify({ ...common, data: sides.names, needs });
    else report.pass();
  },
  examples: () => ({
    good: [
      { name: 'nothing planned', project: tiny() },
      { name: '25 matings and 5 for test, 30 are rated', project: tiny((t) => plan(t, 25)) },
      {
        name: 'the contacts speak for a half that states nothing',
        project: tiny((t) => {
          plan(t, 20);
          delete t.part('housing', 'H-SOCKET').cycles;
        }),
      },
    ],
    bad: [
      { name: 'one mating too many', project: tiny((t) => plan(t, 26)), expect: ['X1–X3'] },
      {
        name: 'a test programme of its own',
        project: tiny((t) => {
          plan(t, 20);
          setLimit(t, TESTS, 11);
        }),
        expect: ['X1–X3'],
      },
      {
        name: 'contacts that stand less than the housing',
        project: tiny((t) => {
          plan(t, 20);
          t.part('contact', 'C-SOCKET').cycles = 10;
        }),
        expect: ['X1–X3'],
      },
    ],
    unknown: [
      {
        name: 'the header states no cycles',
        project: tiny((t) => {
          plan(t, 20);
          delete t.part('header', 'HEADER').cycles;
        }),
        expect: ['X1–X3'],
      },
    ],
  }),
};

/** The body of a half and the contacts in it, each record once. */
function partsOf(use: ConnectorUse): readonly (MatingHalf | ContactPart)[] {
  const { part } = use.resolved;
  const contacts = use.cavities.flatMap((c) => [
    ...c.ends.flatMap((e) => e.end.contactPart ?? []),
    ...(c.spare ? [c.spare] : []),
  ]);
  return [...(part ? [part] : []), ...new Set(contacts)];
}

const plan = (t: TinyDraft, cycles: number): void => void (t.connector('X1').plannedCycles = cycles);
