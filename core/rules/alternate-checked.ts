import { substitution } from '../derive/substitute';
import { tiny } from '../model/tiny';
import { partRef } from './refs';
import type { Rule } from './rule';
import { boughtParts, recordByNumber } from './shared/bought-parts';
import { fact, partFact } from './shared/evidence';
import { addPartLike } from './shared/example-parts';

/**
 * Speaks of bought parts whose records name alternates, by the records alone: each field that rules judge the part by must be
 * the same or no worse. That is cheap enough for every edit. What an alternate would really break is found by putting it in
 * the place of its part, see `checkAlternates` in core/decisions, whose answer then stands in the place of this one.
 */
export const alternateChecked: Rule<'project'> = {
  meta: {
    id: 'alternate-checked',
    revision: 2,
    severity: 'major',
    summary: 'An alternate keeps every check that its part passes.',
    why: 'A substitute that is bought because a list allows it, and that nobody held against the design, is found when it does not latch.',
    source:
      'IEC 62402 (by title); common practice: form, fit and function compared field by field, as sets of housing, contact and tool',
    message: '{{alternate}} as alternate of {{part}}: {{differences}}',
    unknown: 'Whether {{alternate}} can stand in for {{part}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report) {
    for (const part of boughtParts(project)) {
      const unrecorded: string[] = [];
      for (const number of new Set(part.alternates)) {
        const alternate = recordByNumber(project, number, part.maker);
        const names = { part: part.partNumber, alternate: number };
        if (!alternate) {
          unrecorded.push(number);
          continue;
        }
        const at = [partRef(part), partRef(alternate)];
        const { worse, missing } = substitution(part, alternate);
        const evidence = [
          ...partFact(part, 'alternates', part.alternates?.join(', ')),
          ...fact('differences', worse.join('; ') || 'none', `records of ${part.partNumber} and ${number}`),
        ];
        if (worse.length > 0)
          report.fail({ at, data: { ...names, differences: worse.join('; ') }, evidence });
        else if (missing.length > 0)
          report.cannotVerify({
            at,
            data: names,
            evidence,
            needs: missing.map((field) => ({
              what: `${field} of ${number}`,
              at: partRef(alternate),
              field,
            })),
          });
        else report.pass();
      }
      if (unrecorded.length > 0)
        report.cannotVerify({
          open: true,
          at: [partRef(part)],
          data: { part: part.partNumber, alternate: unrecorded.join(', ') },
          needs: unrecorded.map((n) => ({ what: `record of ${n}`, at: partRef(part), field: 'alternates' })),
        });
    }
  },
  examples: () => ({
    good: [
      { name: 'no alternates', project: tiny() },
      {
        name: 'the same contact of another form, with a wider range',
        project: tiny((t) => {
          addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-B', form: 'loose', areaMaxMm2: 0.7 });
          t.part('contact', 'C-PIN').alternates = ['C-PIN-B'];
        }),
      },
    ],
    bad: [
      {
        name: 'another finish',
        project: tiny((t) => void (t.part('contact', 'C-SOCKET').alternates = ['C-SOCKET-AU'])),
        expect: ['C-SOCKET'],
      },
      {
        name: 'a narrower range',
        project: tiny((t) => {
          addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-B', areaMaxMm2: 0.4 });
          t.part('contact', 'C-PIN').alternates = ['C-PIN-B'];
        }),
        expect: ['C-PIN'],
      },
      {
        name: 'a part of another kind',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').alternates = ['LOCK'])),
        expect: ['WIRE-22'],
      },
    ],
    unknown: [
      {
        name: 'the record of the alternate is not in the project',
        project: tiny((t) => void (t.part('contact', 'C-PIN').alternates = ['C-PIN-X'])),
        expect: ['C-PIN'],
      },
      {
        name: 'the alternate does not state its range',
        project: tiny((t) => {
          const id = addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-B' });
          for (const p of t.project.parts) if (p.id === id && p.kind === 'contact') delete p.areaMaxMm2;
          t.part('contact', 'C-PIN').alternates = ['C-PIN-B'];
        }),
        expect: ['C-PIN'],
      },
    ],
  }),
};
