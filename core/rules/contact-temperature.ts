import type { Part, PartKind } from '../model/parts/part';
import { tiny } from '../model/tiny';
import { partRef } from './refs';
import type { Rule } from './rule';
import { limitFact, limitNeed, partFact, partNeed } from './shared/evidence';
import { addCovering } from './shared/example-route';

/** Parts that make a connection, and what lies on and holds the wires behind it. What a contact adds by its own current is asked by `contact-current`. */
const KINDS: ReadonlySet<PartKind> = new Set<PartKind>([
  'housing', 'header', 'contact', 'wire', 'cable', 'wire-seal', 'cavity-plug', 'secondary-lock', 'splice', 'terminal', 'fuse',
  'covering', 'strain-relief', 'grommet', 'clamp', 'tie',
]); // prettier-ignore

/** A secondary lock without a rating is taken to be of the resin of its housing. */
const SILENT: ReadonlySet<PartKind> = new Set<PartKind>(['secondary-lock']);

export const contactTemperature: Rule<'part'> = {
  meta: {
    id: 'contact-temperature',
    revision: 2,
    severity: 'major',
    summary:
      'Contacts, housings, wires, seals, and what covers and holds the wires, stand the temperature of the air they work in.',
    why: 'The part that stands least decides: a housing that softens lets go of its contacts, a seal that hardens lets water in, a sleeve or a tie that turns brittle falls off, long before the wire takes harm.',
    source: 'common practice: operating temperature at most the least rating of all parts',
    message: '{{part}} stands {{rated}} degC, the air reaches {{ambient}} degC',
    unknown: 'Whether {{part}} stands the temperature cannot be verified; not stated: {{needs}}',
  },
  scope: 'part',
  check(part, report, context) {
    if (!KINDS.has(part.kind)) return;
    const ambient = context.limit('ambient-temperature');
    const rated = part.temperatureMaxC;
    if (rated === undefined && SILENT.has(part.kind)) return;
    const common = { at: [partRef(part)], evidence: evidenceOf(part) };
    if (rated === undefined || !ambient)
      return report.cannotVerify({
        ...common,
        data: { part: part.partNumber },
        needs: [
          ...(rated === undefined ? [partNeed(part, 'temperatureMaxC', 'temperature rating')] : []),
          ...(ambient ? [] : [limitNeed('ambient-temperature', context.limitSet)]),
        ],
      });
    if (rated >= ambient.value) return report.pass();
    report.fail({
      ...common,
      data: { part: part.partNumber, rated, ambient: ambient.value },
      evidence: [...common.evidence, ...limitFact('air', ambient, context.limitSet)],
    });
  },
  examples: () => ({
    good: [
      { name: 'parts for 105 degC in air of 40 degC', project: tiny() },
      {
        name: 'exactly as hot as the part stands',
        project: tiny((t) => void (t.part('contact', 'C-PIN').temperatureMaxC = 40)),
      },
    ],
    bad: [
      {
        name: 'a sleeve that stands less than the air',
        project: tiny((t) => addCovering(t, { innerMaxMm: 4, temperatureMaxC: 30 })),
        expect: ['COVER-1'],
      },
      {
        name: 'a wire that stands less than the air',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').temperatureMaxC = 30)),
        expect: ['WIRE-22'],
      },
    ],
    unknown: [
      {
        name: 'rating of a sleeve not stated',
        project: tiny((t) => addCovering(t, { innerMaxMm: 4 })),
        expect: ['COVER-1'],
      },
      {
        name: 'rating of the housing not stated',
        project: tiny((t) => void delete t.part('housing', 'H-PIN').temperatureMaxC),
        expect: ['H-PIN'],
      },
    ],
  }),
};

const evidenceOf = (part: Part) => partFact(part, 'temperature rating', part.temperatureMaxC, 'degC');
