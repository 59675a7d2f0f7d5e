import type { Part } from '../model/parts/part';
import { tiny, type TinyDraft } from '../model/tiny';
import { partRef } from './refs';
import type { Report, Rule } from './rule';
import { boughtParts } from './shared/bought-parts';
import { partFact, partNeed } from './shared/evidence';

/**
 * Speaks of parts that are bought for the harness. Whether an alternate fits is asked by another rule. A record that says
 * nothing of its lifecycle is asked about only where a series is built.
 */
export const partLifecycle: Rule<'project'> = {
  meta: {
    id: 'part-lifecycle',
    revision: 1,
    severity: 'major',
    summary: 'Every bought part is in production, or an alternate is named for it.',
    why: 'A part that is no longer made stops the line at the next order; what is then bought in haste is nobody’s choice.',
    source:
      'IEC 62402 (obsolescence management, by title); common practice: active, or an approved alternate',
    message: '{{part}} is {{lifecycle}}, and its record names no alternate',
    unknown: 'Whether {{part}} will be there for a series cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report, { isSeries }) {
    for (const part of boughtParts(project)) checkPart(part, isSeries, report);
  },
  examples: () => ({
    good: [
      { name: 'all active', project: tiny() },
      {
        name: 'obsolete, with an alternate',
        project: tiny((t) => {
          t.part('contact', 'C-PIN').lifecycle = 'obsolete';
          t.part('contact', 'C-PIN').alternates = ['C-PIN-B'];
        }),
      },
      {
        name: 'obsolete, but it comes with the board',
        project: tiny((t) => void (t.part('header', 'HEADER').lifecycle = 'obsolete')),
      },
      {
        name: 'not stated, for one harness',
        project: tiny((t) => delete t.part('contact', 'C-PIN').lifecycle),
      },
    ],
    bad: [
      {
        name: 'obsolete',
        project: tiny((t) => void (t.part('contact', 'C-PIN').lifecycle = 'obsolete')),
        expect: ['C-PIN'],
      },
      {
        name: 'not for new designs',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').lifecycle = 'not-for-new-designs')),
        expect: ['WIRE-22'],
      },
    ],
    unknown: [
      {
        name: 'not stated, for a series',
        project: tiny((t) => {
          delete t.part('contact', 'C-PIN').lifecycle;
          series(t);
        }),
        expect: ['C-PIN'],
      },
    ],
  }),
};

const WORDS = {
  'not-for-new-designs': 'not for new designs',
  'last-time-buy': 'on its last orders',
  obsolete: 'obsolete',
} as const;

function checkPart(part: Part, isSeries: boolean, report: Report): void {
  const { lifecycle, alternates = [], replacedBy } = part;
  if (lifecycle === 'active' || (lifecycle !== undefined && alternates.length > 0)) return report.pass();
  const at = [partRef(part)];
  const name = { part: part.partNumber };
  if (lifecycle === undefined) {
    if (isSeries)
      report.cannotVerify({
        open: true,
        at,
        data: name,
        needs: [partNeed(part, 'lifecycle', 'lifecycle')],
      });
    return;
  }
  report.fail({
    at,
    data: { ...name, lifecycle: WORDS[lifecycle] },
    evidence: [
      ...partFact(part, 'lifecycle', lifecycle),
      ...partFact(part, 'alternates', 'none'),
      ...partFact(part, 'replaced by', replacedBy),
    ],
    // It can be had today; the design should not begin with it.
    ...(lifecycle === 'not-for-new-designs' ? { severity: 'minor' as const } : {}),
  });
}

const series = (t: TinyDraft): void => void (t.project.buildQuantities = [1, 100]);
