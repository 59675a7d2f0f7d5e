import type { Compliance } from '../model/parts/common';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { tiny, type TinyDraft } from '../model/tiny';
import { partRef } from './refs';
import type { Report, Rule } from './rule';
import { boughtParts } from './shared/bought-parts';
import { fact, partFact, partNeed } from './shared/evidence';

/**
 * Speaks of the regimes that records name. In a series, a regime that one bought part declares is asked of all of them.
 * A declaration ends against the date of issue of the drawing, since rules know no clock.
 */
export const compliance: Rule<'project'> = {
  meta: {
    id: 'compliance',
    revision: 1,
    severity: 'minor',
    summary:
      'Every bought part has a declaration for each regime that the harness goes by, still in force at the date of issue.',
    why: 'One part without its declaration keeps the whole harness out of a market, and that is found at the border or by the customer.',
    source:
      'IEC 62474 (material declaration, by title); common practice: declaration with date and end for each regime',
    message: '{{part}}: {{problem}}',
    unknown: 'Whether {{part}} keeps to {{regime}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report, { isSeries }) {
    const bought = boughtParts(project);
    const regimes = new Set(bought.flatMap((p) => (p.compliance ?? []).map((c) => c.regime)));
    for (const regime of regimes)
      for (const part of bought) {
        const stated = part.compliance?.find((c) => c.regime === regime);
        if (stated) checkStated(part, stated, project, report);
        else if (isSeries) cannotTell(part, regime, report, 'declaration');
      }
  },
  examples: () => ({
    good: [
      { name: 'no regime named', project: tiny() },
      { name: 'declared by some, for one harness', project: tiny((t) => declare(t, {}, ['C-PIN'])) },
      {
        name: 'declared by all, for a series, one until after the date of issue',
        project: tiny((t) => {
          declare(t, {});
          declare(t, { expires: '2026-12-31' }, ['C-PIN']);
          t.project.buildQuantities = [100];
          t.project.titleBlock.dateOfIssue = '2026-12-31';
        }),
      },
    ],
    bad: [
      {
        name: 'ended before the date of issue',
        project: tiny((t) => {
          declare(t, { expires: '2026-06-30' }, ['C-PIN']);
          t.project.titleBlock.dateOfIssue = '2026-07-01';
        }),
        expect: ['C-PIN'],
      },
      {
        name: 'declared not to keep to it',
        project: tiny((t) => declare(t, { status: 'not-compliant' }, ['WIRE-22'])),
        expect: ['WIRE-22'],
      },
    ],
    unknown: [
      {
        name: 'nothing declared by one part of a series',
        project: tiny((t) => {
          declare(t, {});
          delete t.part('contact', 'C-PIN').compliance;
          t.project.buildQuantities = [100];
        }),
        expect: ['C-PIN'],
      },
      {
        name: 'the maker does not know',
        project: tiny((t) => declare(t, { status: 'unknown' }, ['C-PIN'])),
        expect: ['C-PIN'],
      },
      {
        name: 'an end, and no date of issue to hold it against',
        project: tiny((t) => declare(t, { expires: '2026-06-30' }, ['C-PIN'])),
        expect: ['C-PIN'],
      },
    ],
  }),
};

function checkStated(part: Part, stated: Compliance, project: Project, report: Report): void {
  const { regime, status, expires } = stated;
  const issued = project.titleBlock.dateOfIssue;
  if (status === 'unknown') return cannotTell(part, regime, report, 'declaration');
  const evidence = () => [
    ...partFact(part, regime, status),
    ...partFact(part, 'declared on', stated.date),
    ...partFact(part, 'ends', expires),
    ...fact('date of issue', issued, 'title block'),
  ];
  const at = [partRef(part)];
  const fail = (problem: string): void =>
    report.fail({ at, data: { part: part.partNumber, problem }, evidence: evidence() });
  if (status === 'not-compliant') return fail(`does not keep to ${regime}`);
  if (expires === undefined) return report.pass();
  if (issued === undefined)
    return report.cannotVerify({
      at,
      data: { part: part.partNumber, regime },
      evidence: evidence(),
      needs: [
        {
          what: 'date of issue',
          at: { type: 'project', id: project.id },
          field: 'titleBlock.dateOfIssue',
        },
      ],
    });
  if (expires < issued) return fail(`its declaration for ${regime} ended on ${expires}`);
  report.pass();
}

const cannotTell = (part: Part, regime: string, report: Report, what: string): void =>
  report.cannotVerify({
    open: true,
    at: [partRef(part)],
    data: { part: part.partNumber, regime },
    needs: [partNeed(part, 'compliance', `${regime} ${what}`)],
  });

/** Declares RoHS for the parts of these numbers, or for all. */
function declare(t: TinyDraft, more: Partial<Compliance>, numbers?: readonly string[]): void {
  for (const p of t.project.parts)
    if (!numbers || numbers.includes(p.partNumber))
      p.compliance = [{ regime: 'RoHS', status: 'declared', date: '2026-01-15', ...more }];
}
