import { fuseAgainstWires } from '../calc/fuse-against-wires';
import type { ResolvedWire, Supply } from '../derive/harness';
import { supplyCurrents } from '../derive/supply-currents';
import { wireAmpacity } from '../derive/wire-ampacity';
import type { Signal } from '../model/electrical';
import { tiny } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { sup } from './shared/example-signals';
import { addFuse } from './shared/example-fuse';
import { fact, limitFact } from './shared/evidence';
import { fuseWays, wayNeeds, wiresBeforeFuses, type FuseWay } from './shared/fuse-ways';
import {
  currentFact,
  exceeds,
  figures3,
  fuseRating,
  fuseRef,
  limitsOf,
  powerFeeds,
  signalFact,
  signalNeed,
  signalRef,
  wiresOfSignal,
} from './shared/supply-words';
import { ampacityFact, ampacityNeeds } from './shared/wire-ampacity-words';

/**
 * A fuse protects the wires behind it up to the next fuse; a source that limits its own current protects those before the first
 * one. A power signal with neither is one open point.
 */
export const fuseProtectsWire: Rule<'supply'> = {
  meta: {
    id: 'fuse-protects-wire',
    revision: 1,
    severity: 'critical',
    summary:
      'Every wire that a fuse or a limiting source feeds carries at least its rating, and the fuse its load with a margin.',
    why: 'A wire thinner than its fuse is the fuse. A short at its end heats it over its whole length until something lets go.',
    source:
      'common practice: fuse rating at most the current of every wire behind it, at least 1.25 x the load',
    message: '{{device}}: {{reason}}',
    unknown: 'Whether {{device}} protects its wires cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    if (supply.wires.length === 0) return;
    for (const way of fuseWays(supply)) ofFuse(way, supply, report, context);
    for (const s of powerFeeds(supply)) ofSource(s, supply, report, context);
  },
  examples: () => ({
    good: [
      { name: 'a source that limits at what the wire carries', project: tiny() },
      { name: 'a fuse of 2 A before 22 AWG', project: tiny((t) => void addFuse(t, 2)) },
    ],
    bad: [
      { name: 'a fuse of 5 A before 22 AWG', project: tiny((t) => void addFuse(t, 5)), expect: ['F1'] },
      { name: 'a fuse too small for its load', project: tiny((t) => void addFuse(t, 1)), expect: ['F1'] },
      {
        name: 'a source that limits too high',
        project: tiny((t) => void (sup(t).sourceLimitA = 10)),
        expect: ['SUP'],
      },
    ],
    unknown: [
      {
        name: 'neither a fuse nor a limit of the source',
        project: tiny((t) => void delete sup(t).sourceLimitA),
        expect: ['SUP'],
      },
      {
        name: 'a fuse without a rating',
        project: tiny((t) => void delete addFuse(t, 2).part.ratedA),
        expect: ['F1'],
      },
      {
        name: 'nobody knows from which end the fuse is fed',
        project: tiny((t) => {
          addFuse(t, 2);
          delete sup(t).source;
        }),
        expect: ['F1'],
      },
    ],
  }),
};

function ofFuse(way: FuseWay, supply: Supply, report: Report, context: RuleContext): void {
  const { fuse, behind, wire } = way;
  const { limits, needs: limitNeeds } = limitsOf(context, ['fuse-load-margin']);
  const { ratedA, source } = fuseRating(supply, fuse);
  const current = wire && supplyCurrents(supply, context.limitSet).ofWire(wire);
  const { facts, needs, known } = ampacitiesOf(behind?.wires ?? [], context);
  const open: Need[] = [
    ...limitNeeds,
    ...(ratedA === undefined
      ? [{ what: `rating of ${fuse.designator}`, at: fuseRef(fuse), field: 'ratedA' }]
      : []),
    ...(behind ? [] : wayNeeds(way)),
    ...needs,
  ];
  const margin = limits?.['fuse-load-margin'];
  const evidence = [
    ...fact(`rating of ${fuse.designator}`, ratedA, source, 'A'),
    ...facts,
    ...(current ? [currentFact(`load of ${fuse.designator}`, current)] : []),
    ...limitFact('margin over the load', margin, context.limitSet),
  ];
  const device = fuse.designator;
  const fail = (reason: string, wires: readonly ResolvedWire[], severity?: 'major'): void =>
    report.fail({
      at: [fuseRef(fuse), ...wires.map(wireRef)],
      data: { device, reason },
      evidence,
      ...(severity ? { severity } : {}),
    });
  if (behind?.isBypassed) return fail('other wires lead around it, it protects nothing alone', behind.wires);
  const checked =
    ratedA !== undefined && known.length > 0
      ? fuseAgainstWires.run({
          fuseRatedA: ratedA,
          wires: known.map((k) => ({ id: k.wire.wire.designator, ampacityA: k.currentA })),
          loadA: current?.currentA,
          loadMargin: margin?.value ?? 1,
        })
      : undefined;
  const answer = checked?.ok ? checked.value : undefined;
  if (answer && answer.unprotected.length > 0) {
    const weak = known.filter((k) => answer.unprotected.includes(k.wire.wire.designator)).map((k) => k.wire);
    const reason = `${ratedA} A before ${answer.unprotected.join(', ')}, the weakest of which may carry ${figures3(answer.weakestA)} A`;
    return fail(reason, weak);
  }
  if (
    answer?.loadWithMarginA !== undefined &&
    ratedA !== undefined &&
    exceeds(answer.loadWithMarginA, ratedA)
  )
    return fail(
      `${ratedA} A is less than the load of ${figures3(current?.currentA ?? 0)} A with its margin, ${figures3(answer.loadWithMarginA)} A`,
      [],
      'major',
    );
  if (open.length > 0) report.cannotVerify({ at: [fuseRef(fuse)], data: { device }, needs: open, evidence });
  else report.pass();
}

function ofSource(signal: Signal, supply: Supply, report: Report, context: RuleContext): void {
  const all = wiresOfSignal(supply, signal);
  const limitA = signal.sourceLimitA;
  const isFused = fuseWays(supply).some((w) => w.wire && all.includes(w.wire));
  if (all.length === 0 || (limitA === undefined && isFused)) return;
  const device = `the source of ${signal.name}`;
  const at = [signalRef(signal)];
  if (limitA === undefined)
    return report.cannotVerify({
      at,
      data: { device },
      needs: [signalNeed(signal, 'sourceLimitA', 'a fuse in its wires, or the limit of the source')],
      open: true,
    });
  const { facts, needs, known } = ampacitiesOf(wiresBeforeFuses(supply, all), context);
  const weak = known.filter((k) => exceeds(limitA, k.currentA));
  const evidence = [...signalFact(signal, 'limit of the source', limitA, 'A'), ...facts];
  if (weak.length > 0) {
    const least = Math.min(...weak.map((k) => k.currentA));
    const names = weak.map((k) => k.wire.wire.designator).join(', ');
    const reason = `limits at ${limitA} A before ${names}, the weakest of which may carry ${figures3(least)} A`;
    report.fail({ at: [...at, ...weak.map((k) => wireRef(k.wire))], data: { device, reason }, evidence });
  } else if (needs.length > 0) report.cannotVerify({ at, data: { device }, needs, evidence });
  else report.pass();
}

function ampacitiesOf(wires: readonly ResolvedWire[], { limitSet }: RuleContext) {
  const facts: Evidence[] = [];
  const needs = new Map<string, Need>();
  const known: { readonly wire: ResolvedWire; readonly currentA: number }[] = [];
  for (const wire of wires) {
    const may = wireAmpacity(wire, limitSet);
    if (may.ok) {
      facts.push(ampacityFact(wire, may.value));
      known.push({ wire, currentA: may.value.currentA });
    } else for (const n of ampacityNeeds(wire, may.problem, limitSet)) needs.set(n.what, n);
  }
  return { facts, needs: [...needs.values()], known };
}
