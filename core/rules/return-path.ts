import type { ConnectorUse, ResolvedWire, Supply } from '../derive/harness';
import { tiny } from '../model/tiny';
import type { Evidence, ObjectRef } from './finding';
import { connectorRef, partSource, wireRef } from './refs';
import type { Report, Rule } from './rule';
import { sup } from './shared/example-signals';
import { metalAreaMm2, metalAreaNeed } from './shared/metal-area';
import { powerFeeds, signalNeed, signalRef, wiresOfSignal } from './shared/supply-words';

/** Rounding of catalogue areas: two records of one size differ by less. */
const SAME_SHARE = 0.01;

/**
 * Compares at each connector, since feed and return leave it together. A power signal that does not say on which signal it
 * returns is one open point.
 */
export const returnPath: Rule<'supply'> = {
  meta: {
    id: 'return-path',
    revision: 1,
    severity: 'major',
    summary: 'Wherever wires feed a supply, wires of at least the same metal area lead back beside them.',
    why: 'What goes out must come back. A thin return runs hot and lifts the zero of the far end; one that is missing sends the current through a shield or a frame.',
    source: 'common practice: sum of the return areas at least the sum of the feed areas',
    message:
      'At {{connector}} the return of {{feeds}} has {{returnArea}} mm2 of metal, the feed has {{feedArea}} mm2',
    unknown: 'Whether {{feeds}} has its way back cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report) {
    const feeds = powerFeeds(supply).filter((s) => wiresOfSignal(supply, s).length > 0);
    if (feeds.length === 0) return;
    if (!supply.returnSignal) {
      for (const s of feeds)
        report.cannotVerify({
          at: [signalRef(s)],
          data: { feeds: s.name },
          needs: [signalNeed(s, 'returnsOn', 'the signal that is the return')],
          open: true,
        });
      return;
    }
    const out = new Set(feeds.flatMap((s) => wiresOfSignal(supply, s)));
    const back = new Set(wiresOfSignal(supply, supply.returnSignal));
    const names = feeds.map((s) => s.name).join(', ');
    for (const use of supply.uses) compare(use, out, back, supply, names, report);
  },
  examples: () => ({
    good: [
      { name: 'red and black of one size', project: tiny() },
      {
        name: 'a thinner feed',
        project: tiny((t) => void (t.wire('W1').part = t.part('wire', 'WIRE-26').id)),
      },
      {
        name: 'no power signal',
        project: tiny((t) => {
          sup(t).class = 'signal';
          delete sup(t).returnsOn;
        }),
      },
    ],
    bad: [
      {
        name: 'a thinner return',
        project: tiny((t) => void (t.wire('W2').part = t.part('wire', 'WIRE-26').id)),
        expect: ['X1', 'X2'],
      },
      {
        name: 'no wire leads back',
        project: tiny((t) => {
          t.project.wires = t.project.wires.filter((w) => w.designator !== 'W2');
          const used = new Set(
            t.project.wires.flatMap((w) => w.ends.map((e) => (e.at === 'cavity' ? e.contact : ''))),
          );
          t.project.contacts = t.project.contacts.filter((c) => used.has(c.id));
        }),
        expect: ['X1', 'X2'],
      },
    ],
    unknown: [
      {
        name: 'nobody says on which signal it returns',
        project: tiny((t) => void delete sup(t).returnsOn),
        expect: ['SUP'],
      },
      {
        name: 'no wire chosen for the return',
        project: tiny((t) => void delete t.wire('W2').part),
        expect: ['X1', 'X2'],
      },
    ],
  }),
};

function compare(
  use: ConnectorUse,
  out: ReadonlySet<ResolvedWire>,
  back: ReadonlySet<ResolvedWire>,
  supply: Supply,
  feeds: string,
  report: Report,
): void {
  const here = [...new Set(use.cavities.flatMap((c) => c.ends.map((e) => e.wire)))];
  const outHere = here.filter((w) => out.has(w));
  const backHere = here.filter((w) => back.has(w));
  if (outHere.length === 0 || !supply.returnSignal) return;
  const at: ObjectRef[] = [
    connectorRef(use),
    signalRef(supply.returnSignal),
    ...[...outHere, ...backHere].map(wireRef),
  ];
  const bare = [...outHere, ...backHere].filter((w) => metalAreaMm2(w) === undefined);
  if (bare.length > 0) return report.cannotVerify({ at, data: { feeds }, needs: bare.map(metalAreaNeed) });
  const sum = (wires: readonly ResolvedWire[]): number =>
    wires.reduce((mm2, w) => mm2 + (metalAreaMm2(w) ?? 0), 0);
  const feedArea = sum(outHere);
  const returnArea = sum(backHere);
  if (returnArea >= feedArea * (1 - SAME_SHARE)) return report.pass();
  report.fail({
    at,
    data: {
      connector: use.resolved.connector.designator,
      feeds,
      returnArea: Number(returnArea.toFixed(3)),
      feedArea: Number(feedArea.toFixed(3)),
    },
    evidence: [...outHere, ...backHere].map((w): Evidence => ({
      label: `metal area of ${w.wire.designator} (${out.has(w) ? 'feed' : 'return'})`,
      value: metalAreaMm2(w) ?? 0,
      unit: 'mm2',
      source: w.part ? partSource(w.part) : 'typed',
    })),
  });
}
