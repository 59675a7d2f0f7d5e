import { netsOfSignal } from '../derive/nets-of';
import { signalPairs } from '../derive/signal-pairs';
import type { Harness, Net, ResolvedWire } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import type { ObjectRef } from './finding';
import { wireRef } from './refs';
import type { Report, Rule } from './rule';
import { fact } from './shared/evidence';
import { rtn, sup } from './shared/example-signals';
import { addTwin } from './shared/example-twin';
import { signalRef } from './shared/supply-words';

/** Speaks of signals that are stated to be redundant to another, once of each two. Equipment is not looked into. */
export const redundantTogether: Rule<'project'> = {
  meta: {
    id: 'redundant-together',
    revision: 1,
    severity: 'critical',
    summary: 'Signals that are redundant to each other share no connector and no run of the harness.',
    why: 'The second channel is there for the day the first one fails. One connector that is not pushed home, one chafed bundle takes both at once, and the redundancy was paid for nothing.',
    source: 'FAA AC 43.13-1B, chapter 11, 11-235a: redundant systems through separate connectors and runs',
    message: '{{a}} and {{b}} are redundant to each other and share {{shared}}',
    unknown:
      'Whether {{a}} and {{b}}, which are redundant to each other, run apart cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report) {
    for (const [a, b] of signalPairs.redundantTo(harness.project.signals)) judge(a, b, harness, report);
  },
  examples: () => ({
    good: [
      { name: 'nothing is redundant', project: tiny() },
      { name: 'two channels in two harnesses', project: tiny((t) => twoChannels(t)) },
    ],
    bad: [
      {
        name: 'both channels through one harness',
        project: tiny((t) => void (sup(t).redundantTo = rtn(t).id)),
        expect: ['SUP'],
      },
      {
        name: 'two connectors, one run',
        project: tiny((t) => {
          twoChannels(t);
          t.connector('X5').node = t.connector('X1').node;
          t.connector('X7').node = t.connector('X2').node;
        }),
        expect: ['SUP'],
      },
    ],
    unknown: [
      {
        name: 'two harnesses, one of them not on the formboard',
        project: tiny((t) => {
          twoChannels(t);
          delete t.connector('X5').node;
        }),
        expect: ['SUP'],
      },
    ],
  }),
};

function twoChannels(t: TinyDraft): void {
  addTwin(t);
  const data = t.project.signals.find((s) => s.name === 'DATA');
  if (data) sup(t).redundantTo = data.id;
}

function judge(a: Signal, b: Signal, harness: Harness, report: Report): void {
  const [netsA, netsB] = [netsOfSignal(harness, a.id), netsOfSignal(harness, b.id)];
  const wires = (list: readonly Net[]): readonly ResolvedWire[] => list.flatMap((n) => n.wires);
  if (wires(netsA).length === 0 || wires(netsB).length === 0) return;
  const connectors = (list: readonly Net[]) =>
    new Map(
      list.flatMap((n) => n.points.map((p) => [p.connector.connector.id, p.connector.connector] as const)),
    );
  const segments = (list: readonly Net[]) =>
    new Map(wires(list).flatMap((w) => w.segments.map((s) => [s.id, s] as const)));
  const [ca, cb, sa, sb] = [connectors(netsA), connectors(netsB), segments(netsA), segments(netsB)];
  const sharedConnectors = [...ca.values()].filter((c) => cb.has(c.id));
  const sharedRuns = [...sa.values()].filter((s) => sb.has(s.id));
  const refs: ObjectRef[] = [
    ...sharedConnectors.map((c): ObjectRef => ({ type: 'connector', id: c.id })),
    ...sharedRuns.map((s): ObjectRef => ({ type: 'segment', id: s.id })),
  ];
  const at = [signalRef(a), signalRef(b), ...refs];
  const data = { a: a.name, b: b.name };
  const names = (list: readonly { readonly designator: string }[]): string =>
    list.map((o) => o.designator).join(', ');
  const evidence = [
    ...fact(`${a.name} is redundant to`, b.name, 'signal list'),
    ...fact(`connectors of ${a.name}`, names([...ca.values()]), 'nets'),
    ...fact(`connectors of ${b.name}`, names([...cb.values()]), 'nets'),
    ...fact(`runs of ${a.name}`, names([...sa.values()]) || undefined, 'formboard'),
    ...fact(`runs of ${b.name}`, names([...sb.values()]) || undefined, 'formboard'),
  ];
  if (refs.length > 0) {
    const shared = [
      ...(sharedConnectors.length > 0 ? [`the connectors ${names(sharedConnectors)}`] : []),
      ...(sharedRuns.length > 0 ? [`the runs ${names(sharedRuns)}`] : []),
    ].join(' and ');
    return report.fail({ at, data: { ...data, shared }, evidence });
  }
  const unrouted = [...wires(netsA), ...wires(netsB)].filter((w) => !w.route.found);
  if (unrouted.length === 0) return report.pass();
  const needs = unrouted.map((w) => ({ what: `way of ${w.wire.designator}`, at: wireRef(w), field: 'path' }));
  report.cannotVerify({ at, data, needs, evidence, open: true });
}
