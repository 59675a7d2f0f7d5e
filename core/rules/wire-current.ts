import type { ResolvedWire, Supply } from '../derive/harness';
import { statedCurrent, supplyCurrents } from '../derive/supply-currents';
import { wireAmpacity } from '../derive/wire-ampacity';
import { tiny } from '../model/tiny';
import { wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { sup } from './shared/example-signals';
import { limitFact } from './shared/evidence';
import {
  currentFact,
  exceeds,
  figures3,
  limitsOf,
  signalNeed,
  signalRef,
  wiresOfSignal,
} from './shared/supply-words';
import { ampacityFact, ampacityNeeds } from './shared/wire-ampacity-words';

/**
 * Speaks of wires that carry more than the limit from which currents are asked about. A power or return signal without a
 * current is one open point for the signal; a plain signal without one is outside its subject.
 */
export const wireCurrent: Rule<'supply'> = {
  meta: {
    id: 'wire-current',
    revision: 1,
    severity: 'critical',
    summary: 'A wire carries no more than the published table allows it in a bundle.',
    why: 'A wire that carries too much cooks its own insulation and that of its neighbours. In the middle of a bundle nobody sees it until it shorts.',
    source: 'FAA AC 43.13-1B, table 11-9, or the table that the limit set names',
    message: '{{wire}} carries {{current}} A, the table allows {{limit}} A',
    unknown: 'Whether {{wires}} carry too much current cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    if (supply.wires.length === 0) return;
    const { limits, needs } = limitsOf(context, ['current-asked-from']);
    askForCurrents(supply, report);
    const first = supply.feeds[0];
    if (!limits) {
      if (first) report.cannotVerify({ at: [signalRef(first)], data: { wires: 'the wires' }, needs });
      return;
    }
    const currents = supplyCurrents(supply, context.limitSet);
    const unknown = new Map<object, ResolvedWire[]>();
    for (const wire of supply.wires) {
      const current = currents.ofWire(wire);
      if (!current || current.currentA <= limits['current-asked-from'].value) continue;
      const may = wireAmpacity(wire, context.limitSet);
      if (!may.ok) {
        const key = wire.conductor ?? wire;
        unknown.set(key, [...(unknown.get(key) ?? []), wire]);
      } else if (exceeds(current.currentA, may.value.currentA)) {
        report.fail({
          at: [wireRef(wire)],
          data: {
            wire: wire.wire.designator,
            current: figures3(current.currentA),
            limit: figures3(may.value.currentA),
          },
          evidence: [
            currentFact(`current in ${wire.wire.designator}`, current),
            ampacityFact(wire, may.value),
            ...limitFact('air around the wires', context.limit('ambient-temperature'), context.limitSet),
          ],
        });
      } else report.pass();
    }
    for (const wires of unknown.values()) cannotTell(wires, report, context);
  },
  examples: () => ({
    good: [
      { name: '1 A in 22 AWG', project: tiny() },
      {
        name: 'exactly what the table allows',
        project: tiny((t) => void (sup(t).currentA = 3)),
      },
      {
        name: 'a size that the table lacks, well below the limit on current density',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').size = { system: 'mm2', areaMm2: 0.35 })),
      },
      {
        name: 'a signal of which no current is stated',
        project: tiny((t) => {
          for (const s of t.project.signals) {
            s.class = 'signal';
            delete s.currentA;
            delete s.returnsOn;
          }
        }),
      },
    ],
    bad: [
      {
        name: '4 A out and back in 22 AWG',
        project: tiny((t) => void (sup(t).currentA = 4)),
        expect: ['W1', 'W2'],
      },
      {
        name: 'a thinner wire for the return',
        project: tiny((t) => {
          t.wire('W2').part = t.part('wire', 'WIRE-26').id;
        }),
        expect: ['W2'],
      },
      {
        name: 'no source is named, so the stated current is taken whole',
        project: tiny((t) => {
          delete sup(t).source;
          sup(t).currentA = 4;
        }),
        expect: ['W1', 'W2'],
      },
    ],
    unknown: [
      {
        name: 'no current stated for a power signal',
        project: tiny((t) => void delete sup(t).currentA),
        expect: ['SUP'],
      },
      {
        name: 'temperature rating of the wire not stated',
        project: tiny((t) => void delete t.part('wire', 'WIRE-22').temperatureMaxC),
        expect: ['W1'],
      },
      {
        name: 'no table in the limit set',
        project: tiny((t) => void delete t.project.limitSet.tables),
        expect: ['W1'],
      },
    ],
  }),
};

function askForCurrents(supply: Supply, report: Report): void {
  for (const s of supply.feeds) {
    if (s.class !== 'power' && s.class !== 'return') continue;
    const wires = wiresOfSignal(supply, s);
    if (wires.length === 0 || statedCurrent(supply, s) !== undefined) continue;
    report.cannotVerify({
      at: [signalRef(s)],
      data: { wires: `the wires of ${s.name}` },
      needs: [signalNeed(s, 'currentA', 'current')],
      open: true,
    });
  }
}

function cannotTell(wires: readonly ResolvedWire[], report: Report, { limitSet }: RuleContext): void {
  const first = wires[0];
  const may = first && wireAmpacity(first, limitSet);
  if (!may || may.ok) return;
  report.cannotVerify({
    at: wires.map(wireRef),
    data: { wires: wires.map((w) => w.wire.designator).join(', ') },
    needs: ampacityNeeds(first, may.problem, limitSet),
  });
}
