import { must } from '../base/assert-never';
import { stackOf } from '../calc/length-stack';
import type { ResolvedWire } from '../derive/harness';
import { endAllowance } from '../derive/wire-length';
import { roundTo } from '../model/length-text';
import { tiny } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { partRef, wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { shownMm } from './shared/bundle-words';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { editSegment, setLimit } from './shared/example-route';

const MINUS = 'cut-length-minus';
const SLACK = 'length-slack-max';

/**
 * Speaks of wires with a way over the formboard whose length is typed, or whose segments state a tolerance. Service loops
 * are slack, so a long way may use them up; that they are long enough is `service-loop`.
 */
export const lengthStack: Rule<'wire'> = {
  meta: {
    id: 'length-stack',
    revision: 1,
    severity: 'major',
    summary: 'A wire is long enough for its way at its longest, and not too long for it at its shortest.',
    why: 'A wire that is short by the tolerance of the way strains its contacts or cannot be laid; one that is far too long leaves a loop that nobody drew.',
    source:
      'common practice of tolerance chains, worst case: length - minus >= longest way + allowances; length <= shortest way + allowances + slack',
    message: '{{wire}} is {{measured}} mm long, {{bound}} {{needed}} mm ({{reason}})',
    unknown:
      'Whether {{wire}} is long enough for its way at its longest cannot be verified; not stated: {{needs}}',
  },
  scope: 'wire',
  check(wire, report, context) {
    const { route, length, segments } = wire;
    if (!route.found || length.cutMm === undefined) return;
    const toleranced = segments.some((s) => s.plusMm !== undefined || s.minusMm !== undefined);
    if (length.kind !== 'typed' && !toleranced) return;
    judge(wire, report, context);
  },
  examples: () => ({
    good: [
      { name: 'lengths from the route, no tolerance', project: tiny() },
      // Route 300 mm, datum 4 mm at both ends: 308 mm.
      {
        name: 'typed exactly as long as the way',
        project: tiny((t) => void (t.wire('W1').lengthMm = 308)),
      },
      {
        name: 'extra length for a way that may be 10 mm longer',
        project: tiny((t) => {
          editSegment(t, { plusMm: 10, minusMm: 10 });
          for (const w of ['W1', 'W2']) t.wire(w).extraMm = 10;
        }),
      },
      {
        name: 'a service loop takes up the tolerance',
        project: tiny((t) => {
          editSegment(t, { plusMm: 10, minusMm: 0 });
          t.connector('X1').serviceLoopMm = 15;
        }),
      },
    ],
    bad: [
      {
        name: 'typed shorter than the way',
        project: tiny((t) => void (t.wire('W1').lengthMm = 307)),
        expect: ['W1'],
      },
      {
        name: 'cut to the nominal way, which may be 10 mm longer',
        project: tiny((t) => editSegment(t, { plusMm: 10, minusMm: 10 })),
        expect: ['W1', 'W2'],
      },
      {
        name: 'cutting may take the last millimetre',
        project: tiny((t) => {
          setLimit(t, MINUS, 2);
          t.wire('W1').lengthMm = 309;
        }),
        expect: ['W1'],
      },
      {
        name: 'far longer than the way',
        project: tiny((t) => {
          setLimit(t, SLACK, 50);
          t.wire('W1').lengthMm = 400;
        }),
        expect: ['W1'],
      },
    ],
    unknown: [
      {
        name: 'typed, and a datum is missing',
        project: tiny((t) => {
          for (const w of ['W1', 'W2']) t.wire(w).lengthMm = 320;
          delete t.part('housing', 'H-PIN').datumMm;
        }),
        expect: ['W1', 'W2'],
      },
      {
        name: 'one tolerance of two on the way',
        project: tiny((t) => {
          const n3 = t.newId();
          t.project.nodes.push({ id: n3, designator: 'N3', position: { x: 400, y: 0 } });
          const from = must(t.project.segments[0], 'segment').to;
          t.project.segments.push({ id: t.newId(), designator: 'S2', from, to: n3 });
          t.connector('X2').node = n3;
          editSegment(t, { plusMm: 5, minusMm: 0 });
          for (const w of ['W1', 'W2']) t.wire(w).extraMm = 20;
        }),
        expect: ['W1', 'W2'],
      },
    ],
  }),
};

function judge(wire: ResolvedWire, report: Report, context: RuleContext): void {
  const { length, segments } = wire;
  const cutMm = length.cutMm ?? 0;
  const loopsMm = loopOf(wire.from) + loopOf(wire.to);
  const fixedMm = length.allowancesMm[0] + length.allowancesMm[1] - loopsMm + length.takeUpMm;
  const stack = stackOf(
    segments.map((s) => ({ nominalMm: 0, plusMm: s.plusMm ?? 0, minusMm: s.minusMm ?? 0 })),
  );
  const routeMm = length.routeMm ?? 0;
  const minus = context.limit(MINUS);
  const slack = context.limit(SLACK);
  const neededMm = roundTo(routeMm + stack.worstMaxMm + fixedMm + (minus?.value ?? 0), 6);
  const mostMm =
    slack && slack.value > 0
      ? roundTo(routeMm + stack.worstMinMm + fixedMm + loopsMm + slack.value, 6)
      : Infinity;
  const at = [wireRef(wire)];
  const name = wire.wire.designator;
  const evidence: Evidence[] = [
    ...fact('cut length', cutMm, length.kind === 'typed' ? 'typed' : 'from the route', 'mm'),
    ...fact('way, nominal', shownMm(routeMm), 'formboard', 'mm'),
    ...fact('way, longest', shownMm(routeMm + stack.worstMaxMm), 'worst case of its segments', 'mm'),
    ...fact('way, longest by root sum square', shownMm(routeMm + stack.rssMaxMm), 'for comparison', 'mm'),
    ...fact('way, shortest', shownMm(routeMm + stack.worstMinMm), 'worst case of its segments', 'mm'),
    ...fact('allowances of the ends and take-up', shownMm(fixedMm), 'records of the ends, twist', 'mm'),
    ...fact('service loops', loopsMm, 'typed', 'mm'),
    ...limitFact('may be cut short by', minus, context.limitSet),
    ...limitFact('may be longer by', slack, context.limitSet),
  ];
  if (cutMm < neededMm)
    return report.fail({
      at,
      evidence,
      data: {
        wire: name,
        measured: cutMm,
        bound: 'at least',
        needed: shownMm(neededMm),
        reason: 'longest way',
      },
      fix: lengthen(wire, neededMm),
    });
  if (cutMm > mostMm)
    return report.fail({
      at,
      evidence,
      data: {
        wire: name,
        measured: cutMm,
        bound: 'at most',
        needed: shownMm(mostMm),
        reason: 'shortest way',
      },
    });
  const needs = needsOf(wire, context);
  if (needs.length > 0) report.cannotVerify({ open: true, at, data: { wire: name }, evidence, needs });
  else report.pass();
}

const loopOf = (end: ResolvedWire['from']): number => end.connector?.connector.serviceLoopMm ?? 0;

function lengthen(wire: ResolvedWire, neededMm: number) {
  const { id, designator, extraMm = 0 } = wire.wire;
  const upTo = Math.ceil(neededMm);
  const change =
    wire.length.kind === 'typed'
      ? { lengthMm: upTo }
      : { extraMm: roundTo(extraMm + upTo - (wire.length.cutMm ?? 0), 3) };
  return { label: `Lengthen ${designator} to ${upTo} mm`, command: 'wire.edit', args: { ids: [id], change } };
}

/** Tolerances where others on the same way state theirs, and datums that a typed length cannot stand in for. */
function needsOf(wire: ResolvedWire, context: RuleContext): Need[] {
  const stated = wire.segments.some((s) => s.plusMm !== undefined);
  const tolerances = wire.segments.flatMap((s): Need[] =>
    stated && s.plusMm === undefined
      ? [{ what: `plus tolerance of ${s.designator}`, at: { type: 'segment', id: s.id }, field: 'plusMm' }]
      : [],
  );
  const datums = [wire.from, wire.to].flatMap((end) => {
    const part = end.connector?.part;
    return part
      ? endAllowance(end).needs.map((what): Need => ({ what, at: partRef(part), field: 'datumMm' }))
      : [];
  });
  const limit = context.limit(MINUS) ? [] : [limitNeed(MINUS, context.limitSet)];
  return [...tolerances, ...datums, ...limit];
}
