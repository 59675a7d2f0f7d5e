import type { SegmentUse } from '../derive/harness';
import { roundTo } from '../model/length-text';
import type { LimitId } from '../model/limit-sets/limit-ids';
import { tiny } from '../model/tiny';
import { segmentRef } from './refs';
import type { Rule } from './rule';
import { shownMm } from './shared/bundle-words';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { addCovering, addTies, dropLimit, setLimit } from './shared/example-route';

const TIED: LimitId = 'tie-spacing-max';
const UNTIED: LimitId = 'untied-length-max';

/**
 * Speaks of segments that have ties, and of the others only where the project asks for ties by a limit above zero. What a
 * covering holds together needs no tie; the ends of a segment, at a breakout or a housing, count as held.
 */
export const tieSpacing: Rule<'segment'> = {
  meta: {
    id: 'tie-spacing',
    revision: 1,
    severity: 'minor',
    summary: 'A bundle lies bare no longer from tie to tie than the limit.',
    why: 'Between ties that are far apart wires spread, snag and chafe, and a loop can be caught when the harness is put in.',
    source: 'FAA AC 43.13-1B, 11-158; NASA workmanship standards 4.02; common practice 200 to 300 mm',
    message: '{{segment}} lies bare for {{measured}} mm {{where}}, at most {{limit}} mm should',
    unknown: 'Whether {{segment}} is tied often enough cannot be verified; not stated: {{needs}}',
  },
  scope: 'segment',
  check(use, report, context) {
    if (use.wires.length === 0) return;
    const id = use.ties.length > 0 ? TIED : UNTIED;
    const limit = context.limit(id);
    const at = [segmentRef(use)];
    const data = { segment: use.segment.designator };
    if (!limit) {
      if (id === TIED)
        report.cannotVerify({ open: true, at, data, needs: [limitNeed(id, context.limitSet)] });
      return;
    }
    if (id === UNTIED && limit.value === 0) return;
    const bareMm = longestBareMm(use);
    if (roundTo(bareMm, 6) <= limit.value) return report.pass();
    report.fail({
      open: id === UNTIED,
      at,
      data: {
        ...data,
        measured: shownMm(bareMm),
        limit: limit.value,
        where: id === TIED ? 'between ties' : 'without a tie',
      },
      evidence: [
        ...fact('length', shownMm(use.lengthMm), 'formboard', 'mm'),
        ...fact('ties', use.ties.length, 'formboard'),
        ...fact('longest bare stretch', shownMm(bareMm), 'formboard, without what coverings hold', 'mm'),
        ...limitFact(id === TIED ? 'most from tie to tie' : 'most without a tie', limit, context.limitSet),
      ],
    });
  },
  examples: () => ({
    good: [
      { name: 'no ties, and none asked for', project: tiny() },
      { name: '300 mm with a tie in the middle', project: tiny((t) => addTies(t, [150])) },
      {
        name: 'none asked for where a sleeve holds the wires',
        project: tiny((t) => {
          setLimit(t, UNTIED, 100);
          addCovering(t, { innerMaxMm: 4 }, { fromMm: 50, toMm: 250 });
        }),
      },
      {
        name: 'exactly the limit',
        project: tiny((t) => {
          setLimit(t, TIED, 200);
          addTies(t, [50, 250]);
        }),
      },
    ],
    bad: [
      {
        name: 'ties further apart than the limit',
        project: tiny((t) => {
          setLimit(t, TIED, 120);
          addTies(t, [50, 250]);
        }),
        expect: ['S1'],
      },
      {
        name: 'far from the last tie to the end',
        project: tiny((t) => {
          setLimit(t, TIED, 120);
          addTies(t, [50, 150]);
        }),
        expect: ['S1'],
      },
      {
        name: 'no tie where the project asks for ties',
        project: tiny((t) => setLimit(t, UNTIED, 200)),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: 'tied, and no limit in the limit set',
        project: tiny((t) => {
          dropLimit(t, TIED);
          addTies(t, [50]);
        }),
        expect: ['S1'],
      },
    ],
  }),
};

/** The longest stretch between neighbouring ties or ends that no covering lies on, mm. */
function longestBareMm(use: SegmentUse): number {
  const covered = [...use.coverings].sort((a, b) => a.fromMm - b.fromMm);
  let longest = 0;
  let at = 0;
  for (const end of [...use.ties.map((t) => t.atMm), use.lengthMm]) {
    for (const c of covered) {
      if (c.toMm <= at || c.fromMm >= end) continue;
      longest = Math.max(longest, c.fromMm - at);
      at = Math.max(at, Math.min(c.toMm, end));
    }
    longest = Math.max(longest, end - at);
    at = end;
  }
  return longest;
}
