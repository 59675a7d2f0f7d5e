import { lengthTolerance as lengthToleranceCalc } from '../calc/length-tolerance';
import { roundTo } from '../model/length-text';
import { tiny } from '../model/tiny';
import type { Need } from './finding';
import { segmentRef } from './refs';
import type { Rule } from './rule';
import { shownMm } from './shared/bundle-words';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { dropLimit, editSegment } from './shared/example-route';

const LIMIT = 'length-tolerance-share';

/** Speaks of segments for which a tolerance is stated; the others are built to the default of their length. */
export const lengthTolerance: Rule<'segment'> = {
  meta: {
    id: 'length-tolerance',
    revision: 1,
    severity: 'minor',
    summary: 'A length tolerance is no narrower than cutting, crimping and laying can hold.',
    why: 'Tolerances of sheet metal put on a wire cannot be built or measured: the shop asks back, or scraps good harnesses.',
    source:
      'IPC/WHMA-A-620, table 11-1 (default tolerance by length), times the share that the project allows; common practice',
    message:
      'The tolerance of {{segment}} is {{measured}} mm wide on {{length}} mm; {{needed}} mm is the narrowest',
    unknown: 'Whether the tolerance of {{segment}} can be built cannot be verified; not stated: {{needs}}',
  },
  scope: 'segment',
  check(use, report, context) {
    const { plusMm, minusMm, designator } = use.segment;
    if (plusMm === undefined && minusMm === undefined) return;
    const limit = context.limit(LIMIT);
    const self = segmentRef(use);
    const at = [self];
    const standard = defaultWidthMm(use.lengthMm);
    const narrowest = limit && standard !== undefined ? standard * limit.value : undefined;
    const widthMm = (plusMm ?? 0) + (minusMm ?? 0);
    const evidence = [
      ...fact('plus', plusMm, 'typed', 'mm'),
      ...fact('minus', minusMm, 'typed', 'mm'),
      ...fact('length', shownMm(use.lengthMm), 'formboard', 'mm'),
      ...fact('default tolerance of that length', standard, 'IPC/WHMA-A-620, table 11-1', 'mm'),
      ...limitFact('narrowest, as a share of it', limit, context.limitSet),
    ];
    if (narrowest !== undefined && roundTo(widthMm, 6) >= roundTo(narrowest, 6)) return report.pass();
    const stated = plusMm !== undefined && minusMm !== undefined;
    if (narrowest === undefined || !stated) {
      const half = (field: 'plusMm' | 'minusMm', what: string): Need[] =>
        use.segment[field] === undefined ? [{ what: `${what} of ${designator}`, at: self, field }] : [];
      const needs = [
        ...half('plusMm', 'plus tolerance'),
        ...half('minusMm', 'minus tolerance'),
        ...(limit ? [] : [limitNeed(LIMIT, context.limitSet)]),
        ...(standard === undefined ? [{ what: `length of ${designator}`, at: self, field: 'lengthMm' }] : []),
      ];
      return report.cannotVerify({ open: true, at, data: { segment: designator }, evidence, needs });
    }
    const data = { segment: designator, measured: widthMm, length: shownMm(use.lengthMm) };
    report.fail({ at, data: { ...data, needed: shownMm(narrowest) }, evidence });
  },
  examples: () => ({
    good: [
      { name: 'no tolerance stated', project: tiny() },
      // 300 mm: +25/-0 by default, a fifth of it are 5 mm.
      {
        name: 'exactly a fifth of the default',
        project: tiny((t) => editSegment(t, { plusMm: 2.5, minusMm: 2.5 })),
      },
      { name: 'wide enough by the plus alone', project: tiny((t) => editSegment(t, { plusMm: 10 })) },
    ],
    bad: [
      {
        name: 'half a millimetre, as for sheet metal',
        project: tiny((t) => editSegment(t, { plusMm: 0.5, minusMm: 0.5 })),
        expect: ['S1'],
      },
      {
        name: 'what 300 mm may have is too narrow on 2 m',
        project: tiny((t) => editSegment(t, { lengthMm: 2000, plusMm: 5, minusMm: 0 })),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: 'only the minus is stated',
        project: tiny((t) => editSegment(t, { minusMm: 1 })),
        expect: ['S1'],
      },
      {
        name: 'no limit in the limit set',
        project: tiny((t) => {
          editSegment(t, { plusMm: 5, minusMm: 5 });
          dropLimit(t, LIMIT);
        }),
        expect: ['S1'],
      },
    ],
  }),
};

/** Plus and minus together; undefined for a segment without length. */
function defaultWidthMm(lengthMm: number): number | undefined {
  const input = lengthToleranceCalc.inputs.safeParse({ lengthMm });
  const found = input.success ? lengthToleranceCalc.run(input.data) : undefined;
  return found?.ok ? found.value.plusMm + found.value.minusMm : undefined;
}
