import type { ResolvedMate, Supply } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Need } from './finding';

import type { Report, Rule } from './rule';
import { partFact, partNeed } from './shared/evidence';
import { sup } from './shared/example-signals';
import { carriedIn, firstMateText, isFirstMate } from './shared/first-mate';
import { mateSides } from './shared/mate-sides';
import { signalFact, signalRef } from './shared/supply-words';

/** Speaks of signals that are stated to be mated and parted while they are live, at each mate that they cross. */
export const mateUnderPower: Rule<'supply'> = {
  meta: {
    id: 'mate-under-power',
    revision: 1,
    severity: 'critical',
    summary:
      'Where a supply is mated live, both halves are made to break it under load, and its return meets first.',
    why: 'A contact that is parted under load draws an arc, which burns the finish off in a few matings. Where the return meets last, the current finds its way through the signal lines.',
    source: 'IEC 61984 (connectors with and without breaking capacity), title and scope; common practice',
    message: '{{signal}} is mated live at {{a}} and {{b}}: {{reason}}',
    unknown:
      'Whether {{signal}} may be mated live at {{a}} and {{b}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report) {
    for (const signal of supply.feeds)
      if (signal.liveMating === true) for (const mate of supply.mates) judge(mate, signal, supply, report);
  },
  examples: () => ({
    good: [
      { name: 'nothing is mated live', project: tiny() },
      { name: 'halves that break under load, the return first', project: tiny((t) => live(t, true, ['2'])) },
    ],
    bad: [
      {
        name: 'halves that are not made to break under load',
        project: tiny((t) => live(t, false, ['2'])),
        expect: ['X1–X3', 'X2–X4'],
      },
      {
        name: 'the feed meets first, the return with the others',
        project: tiny((t) => live(t, true, ['1'])),
        expect: ['X1–X3', 'X2–X4'],
      },
    ],
    unknown: [
      {
        name: 'the records say nothing of it',
        project: tiny((t) => live(t, undefined, undefined)),
        expect: ['X1–X3', 'X2–X4'],
      },
    ],
  }),
};

function live(t: TinyDraft, breaks: boolean | undefined, first: string[] | undefined): void {
  sup(t).liveMating = true;
  for (const p of t.project.parts) {
    if (p.kind !== 'housing' && p.kind !== 'header') continue;
    if (breaks !== undefined) p.breaksUnderLoad = breaks;
    if (first) p.firstMatePositions = first;
  }
}

function judge(mate: ResolvedMate, signal: Signal, supply: Supply, report: Report): void {
  const sides = mateSides(mate);
  const fed = carriedIn(mate, supply.nets, signal);
  if (!sides || fed.length === 0) return;
  const halves = [sides.a, sides.b];
  const at = [...sides.at, signalRef(signal)];
  const data = { signal: signal.name, ...sides.names };
  const evidence = [
    ...signalFact(signal, 'mated live', 'yes'),
    ...halves.flatMap((h) => [
      ...partFact(
        h,
        `${h.partNumber} breaks under load`,
        h.breaksUnderLoad === undefined ? undefined : h.breaksUnderLoad ? 'yes' : 'no',
      ),
      ...partFact(h, `${h.partNumber} meets first at`, firstMateText(h)),
    ]),
  ];
  const needs: Need[] = halves
    .filter((h) => h.breaksUnderLoad === undefined)
    .map((h) => partNeed(h, 'breaksUnderLoad', 'breaking capacity'));
  const reasons = halves
    .filter((h) => h.breaksUnderLoad === false)
    .map((h) => `${h.partNumber} is not made to break under load`);
  const { returnSignal } = supply;
  for (const pair of returnSignal ? carriedIn(mate, supply.nets, returnSignal) : []) {
    const first = isFirstMate(sides.a, sides.b, pair);
    if (first === undefined)
      needs.push(...halves.map((h) => partNeed(h, 'firstMatePositions', 'positions that meet first')));
    else if (!first && returnSignal) reasons.push(`its return ${returnSignal.name} does not meet first`);
  }
  if (reasons.length > 0)
    report.fail({ at, data: { ...data, reason: [...new Set(reasons)].join(', ') }, evidence });
  else if (needs.length > 0) {
    const once = new Map(needs.map((n) => [n.what, n]));
    report.cannotVerify({ at, data, needs: [...once.values()], evidence });
  } else report.pass();
}
