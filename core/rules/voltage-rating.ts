import type { Supply } from '../derive/harness';
import type { Signal } from '../model/electrical';
import type { Part } from '../model/parts/part';
import { tiny } from '../model/tiny';
import type { Need } from './finding';
import { partRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { sup } from './shared/example-signals';
import { limitFact, partFact, partNeed } from './shared/evidence';
import { fusePart, limitsOf, signalFact, signalNeed, signalRef, wiresOfSignal } from './shared/supply-words';

/**
 * A part that states a rating is compared with it at any voltage; one that states none is asked for it from a voltage of the
 * limit set on. A power signal without a voltage is one open point, a plain signal without one is outside its subject.
 */
export const voltageRating: Rule<'supply'> = {
  meta: {
    id: 'voltage-rating',
    revision: 1,
    severity: 'critical',
    summary: 'Every part on a net is rated for the voltage of its signal.',
    why: 'Insulation beyond its rating holds for a while. It fails when it is wet, bent or old, and it fails to whatever is beside it.',
    source:
      'IEC 61984 (rated insulation voltage of connectors), title and scope; ratings of the part records',
    message: '{{signal}} has {{voltage}} V, {{parts}}',
    unknown: 'Whether the parts on {{signal}} stand its voltage cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    const { limits, needs } = limitsOf(context, ['voltage-asked-from']);
    const signals = [...supply.feeds, ...(supply.returnSignal ? [supply.returnSignal] : [])];
    for (const s of signals) {
      if (wiresOfSignal(supply, s).length === 0) continue;
      const askedFrom = limits?.['voltage-asked-from'];
      if (!askedFrom) report.cannotVerify({ at: [signalRef(s)], data: { signal: s.name }, needs });
      else judge(s, supply, askedFrom.value, report, context);
    }
  },
  examples: () => ({
    good: [
      { name: '12 V on parts for 250 V', project: tiny() },
      {
        name: 'exactly the rating',
        project: tiny((t) => void (sup(t).voltageV = 250)),
      },
      {
        name: 'a low voltage on parts that state none',
        project: tiny((t) => {
          for (const p of t.project.parts) if ('voltageMaxV' in p) delete p.voltageMaxV;
        }),
      },
    ],
    bad: [
      {
        name: '325 V on parts for 250 and 300 V',
        project: tiny((t) => void (sup(t).voltageV = 325)),
        expect: ['SUP'],
      },
      {
        name: 'negative, and as high',
        project: tiny((t) => void (sup(t).voltageV = -325)),
        expect: ['SUP'],
      },
    ],
    unknown: [
      {
        name: 'no voltage stated for a power signal',
        project: tiny((t) => void delete sup(t).voltageV),
        expect: ['SUP'],
      },
      {
        name: '60 V on a header that states no rating',
        project: tiny((t) => {
          sup(t).voltageV = 60;
          delete t.part('header', 'HEADER').voltageMaxV;
        }),
        expect: ['SUP'],
      },
    ],
  }),
};

type Rated = Part & { readonly voltageMaxV?: number | undefined };

function judge(
  signal: Signal,
  supply: Supply,
  askedFromV: number,
  report: Report,
  context: RuleContext,
): void {
  const data = { signal: signal.name };
  if (signal.voltageV === undefined) {
    if (signal.class === 'power') {
      const needs = [signalNeed(signal, 'voltageV', 'voltage')];
      report.cannotVerify({ at: [signalRef(signal)], data, needs, open: true });
    }
    return;
  }
  // Between the conductors, where the return is not the zero of the harness.
  const zeroV = signal === supply.returnSignal ? 0 : (supply.returnSignal?.voltageV ?? 0);
  const voltage = Math.max(Math.abs(signal.voltageV), Math.abs(signal.voltageV - zeroV));
  if (voltage === 0) return;
  const parts = ratedParts(signal, supply);
  const over = parts.filter((p) => p.voltageMaxV !== undefined && p.voltageMaxV < voltage);
  const silent = voltage < askedFromV ? [] : parts.filter((p) => p.voltageMaxV === undefined);
  const evidence = [
    ...signalFact(signal, 'voltage', signal.voltageV, 'V'),
    ...parts.flatMap((p) => partFact(p, `rated voltage of ${p.partNumber}`, p.voltageMaxV, 'V')),
    ...limitFact('ratings asked for from', context.limit('voltage-asked-from'), context.limitSet),
  ];
  if (over.length > 0) {
    const at = [signalRef(signal), ...over.map(partRef)];
    const text = over.map((p) => `${p.partNumber} is rated ${p.voltageMaxV} V`).join(', ');
    report.fail({ at, data: { ...data, voltage, parts: text }, evidence });
  } else if (silent.length > 0) {
    const needs: Need[] = silent.map((p) => partNeed(p, 'voltageMaxV', 'rated voltage'));
    report.cannotVerify({ at: [signalRef(signal)], data, needs, evidence });
  } else report.pass();
}

/** Records of connectors, wires and fuses on the nets of a signal. */
function ratedParts(signal: Signal, supply: Supply): readonly Rated[] {
  const wires = wiresOfSignal(supply, signal);
  const fuses = supply.fuses.filter((f) => wires.some((w) => w.wire.id === f.wire));
  const points = supply.nets.filter((n) => n.signals.includes(signal)).flatMap((n) => n.points);
  return [
    ...new Set<Rated>([
      ...points.flatMap((p) => p.connector.part ?? []),
      ...wires.flatMap((w) => (w.part?.kind === 'wire' || w.part?.kind === 'cable' ? w.part : [])),
      ...fuses.flatMap((f) => fusePart(supply, f) ?? []),
    ]),
  ];
}
