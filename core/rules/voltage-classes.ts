import { cavityLayoutOf } from '../derive/cavity-layout';
import type { ConnectorUse, Harness, ResolvedWire, SegmentUse } from '../derive/harness';
import { pointKey } from '../derive/net-keys';
import { netAt } from '../derive/net-table';
import { memoByIdentity } from '../base/memo-by-identity';
import type { Limit } from '../model/limit-set';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { cavityRef, connectorRef, partRef, partSource, segmentRef, wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { addPartLike } from './shared/example-parts';
import { dropLimit } from './shared/example-route';
import { sup } from './shared/example-signals';
import { addTwin } from './shared/example-twin';
import { signalNeed } from './shared/supply-words';
import { signalsOfWire } from './shared/wire-facts';

/**
 * Speaks only where a signal of the project is above the hazardous voltage. Its return is of the same class, at whatever
 * voltage. In a run, insulation for the highest voltage on every wire is separation enough; in a connector a free position is.
 */
export const voltageClasses: Rule<'project'> = {
  meta: {
    id: 'voltage-classes',
    revision: 1,
    severity: 'critical',
    summary:
      'Hazardous and low voltage do not lie beside each other in a connector, and share a run only where every wire stands the highest voltage.',
    why: 'Low-voltage wires end in places that people touch. One nick, one strand across two contacts, and the hazardous voltage is there.',
    source:
      'IEC 60204-1, 13.1.3: conductors of different voltages in one duct, by title; IEC 61140; common practice for positions',
    message: 'In {{place}}, {{high}} at {{voltage}} V lies beside {{low}}: {{reason}}',
    unknown:
      'Whether {{high}} at {{voltage}} V is kept apart from {{low}} in {{place}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report, context) {
    const limit = context.limit('hazardous-voltage');
    const { signals } = harness.project;
    if (!limit) {
      if (
        signals.length > 0 &&
        harness.wires.length > 0 &&
        signals.some((s) => Math.abs(s.voltageV ?? 0) > LOWEST_V)
      )
        report.cannotVerify({
          at: [{ type: 'project', id: harness.project.id }],
          data: { place: 'the harness', high: 'the highest', voltage: highestOf(signals), low: 'the others' },
          needs: [limitNeed('hazardous-voltage', context.limitSet)],
        });
      return;
    }
    const classes = classesUnder(limit)(signals);
    if (classes.high.size === 0) return;
    const setting = { harness, classes, limit, report, context };
    for (const use of harness.connectors) inConnector(use, setting);
    for (const use of harness.segments) inSegment(use, setting);
  },
  examples: () => ({
    good: [
      { name: 'low voltage only', project: tiny() },
      {
        name: '110 V with its return, by themselves',
        project: tiny((t) => void (sup(t).voltageV = 110)),
      },
      {
        name: '110 V and 5 V in one run, all wires for 300 V',
        project: tiny((t) => oneRun(t, 110, 300)),
      },
    ],
    bad: [
      {
        name: '110 V beside a signal in a connector',
        project: tiny((t) => {
          sup(t).voltageV = 110;
          delete sup(t).returnsOn;
        }),
        expect: ['X1', 'X2', 'X3', 'X4'],
      },
      {
        name: '110 V and 5 V in one run, wires for 60 V',
        project: tiny((t) => oneRun(t, 110, 60)),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: '110 V beside a signal of which the voltage is not stated',
        project: tiny((t) => {
          sup(t).voltageV = 110;
          delete sup(t).returnsOn;
          for (const s of t.project.signals) if (s.name === 'RTN') delete s.voltageV;
        }),
        expect: ['X1', 'X2', 'X3', 'X4'],
      },
      {
        name: '110 V and 5 V in one run, and a record that states no voltage',
        project: tiny((t) => oneRun(t, 110, undefined)),
        expect: ['S1'],
      },
      {
        name: 'no limit in the limit set',
        project: tiny((t) => {
          sup(t).voltageV = 110;
          dropLimit(t, 'hazardous-voltage');
        }),
        expect: ['Tiny example'],
      },
    ],
  }),
};

/** Below this nobody asks for classes, whatever the limit set lacks. */
const LOWEST_V = 25;

/** Two harnesses in one run; the second in wires of a part that states `wireV`. */
function oneRun(t: TinyDraft, voltageV: number, wireV: number | undefined): void {
  addTwin(t);
  sup(t).voltageV = voltageV;
  const part = addPartLike(t, 'wire', 'WIRE-22', { partNumber: 'WIRE-LV' });
  for (const p of t.project.parts)
    if (p.id === part && p.kind === 'wire') {
      if (wireV === undefined) delete p.voltageMaxV;
      else p.voltageMaxV = wireV;
    }
  for (const w of ['W3', 'W4']) t.wire(w).part = part;
  t.connector('X5').node = t.connector('X1').node;
  t.connector('X7').node = t.connector('X2').node;
}

interface Classes {
  /** Ids of signals above the limit, and of their returns. */
  readonly high: ReadonlySet<string>;
  readonly highestV: number;
}

interface Setting {
  readonly harness: Harness;
  readonly classes: Classes;
  readonly limit: Limit;
  readonly report: Report;
  readonly context: RuleContext;
}

const highestOf = (signals: readonly Signal[]): number =>
  Math.max(0, ...signals.map((s) => Math.abs(s.voltageV ?? 0)));

function classesOf(signals: readonly Signal[], limitV: number): Classes {
  const above = signals.filter((s) => Math.abs(s.voltageV ?? 0) > limitV);
  return {
    high: new Set(above.flatMap((s) => [s.id, ...(s.returnsOn === undefined ? [] : [s.returnsOn])])),
    highestV: highestOf(above),
  };
}

const classesUnder = memoByIdentity((limit: Limit) =>
  memoByIdentity((signals: readonly Signal[]) => classesOf(signals, limit.value)),
);

/** The name in a sentence, with the voltage where it is stated. */
const signalText = (s: Signal): string =>
  s.voltageV === undefined ? s.name : `${s.name} (${String(s.voltageV)} V)`;

/** One finding for a connector: its first pair of neighbours stands for the others, all are in the evidence. */
function inConnector(use: ConnectorUse, { harness, classes, limit, report, context }: Setting): void {
  const { connector, part } = use.resolved;
  const signalsAt = (cavity: string): readonly Signal[] =>
    netAt(harness.nets, pointKey(connector.id, cavity))?.signals ?? [];
  const isHigh = (s: Signal): boolean => classes.high.has(s.id);
  const hot = use.cavities.filter((c) => signalsAt(c.cavity).some(isHigh));
  if (hot.length === 0 || !part) return;
  const { byCavity } = cavityLayoutOf(part);
  const meetings = hot.flatMap((c) => {
    const here = byCavity.get(c.cavity);
    return use.cavities.flatMap((other) => {
      const there = byCavity.get(other.cavity);
      const low = signalsAt(other.cavity).filter((s) => !isHigh(s));
      if (!here || !there || low.length === 0 || hot.includes(other)) return [];
      const isBeside = Math.max(Math.abs(here.column - there.column), Math.abs(here.row - there.row)) <= 1;
      const high = signalsAt(c.cavity).find(isHigh);
      return isBeside && high ? [{ hot: c, high, cool: other, low }] : [];
    });
  });
  const [first] = meetings;
  if (!first) return report.pass();
  const blank = meetings.flatMap((m) =>
    m.low.filter((s) => s.voltageV === undefined && s.class !== 'shield'),
  );
  const known = meetings.find((m) => m.low.some((s) => s.voltageV !== undefined)) ?? first;
  const at = [connectorRef(use), ...meetings.flatMap((m) => [cavityRef(m.hot), cavityRef(m.cool)])];
  const data = {
    place: connector.designator,
    high: known.high.name,
    voltage: classes.highestV,
    low: known.low.map(signalText).join(', '),
  };
  const evidence: Evidence[] = [
    ...meetings.flatMap((m) =>
      fact(
        `${connector.designator}:${m.hot.cavity} beside ${connector.designator}:${m.cool.cavity}`,
        `${signalText(m.high)} beside ${m.low.map(signalText).join(', ')}`,
        'nets and mating face',
      ),
    ),
    ...limitFact('hazardous above', limit, context.limitSet),
  ];
  if (blank.length === meetings.flatMap((m) => m.low).length) {
    const needs = [...new Set(blank)].map((s) => signalNeed(s, 'voltageV', 'voltage'));
    return report.cannotVerify({ at: unique(at), data, needs, evidence });
  }
  const reason = `cavities ${known.hot.cavity} and ${known.cool.cavity} are neighbours, with no free position between`;
  report.fail({ at: unique(at), data: { ...data, reason }, evidence });
}

function inSegment(use: SegmentUse, { harness, classes, limit, report, context }: Setting): void {
  const isHigh = (w: ResolvedWire): boolean => signalsOfWire(harness, w).some((s) => classes.high.has(s.id));
  const hot = use.wires.filter(isHigh);
  const cool = use.wires.filter((w) => !isHigh(w) && signalsOfWire(harness, w).length > 0);
  if (hot.length === 0 || cool.length === 0) return;
  const here = hot.flatMap((w) => signalsOfWire(harness, w));
  const high = here.reduce((a, b) => (Math.abs(b.voltageV ?? 0) > Math.abs(a.voltageV ?? 0) ? b : a));
  const highestV = Math.abs(high.voltageV ?? 0) || classes.highestV;
  const names = (wires: readonly ResolvedWire[]): string => wires.map((w) => w.wire.designator).join(', ');
  const weak = use.wires.filter((w) => ratingOf(w) !== undefined && (ratingOf(w) ?? 0) < highestV);
  const blank = use.wires.filter((w) => ratingOf(w) === undefined);
  const at = [segmentRef(use), ...[...weak, ...blank].map(wireRef)];
  const data = { place: use.segment.designator, high: high.name, voltage: highestV, low: names(cool) };
  const evidence: Evidence[] = [
    ...use.wires.flatMap((w) =>
      fact(`rating of ${w.wire.designator}`, ratingOf(w), w.part ? partSource(w.part) : '', 'V'),
    ),
    ...limitFact('hazardous above', limit, context.limitSet),
  ];
  if (weak.length > 0) {
    const reason = `${names(weak)} ${weak.length === 1 ? 'is' : 'are'} rated for less`;
    report.fail({ at, data: { ...data, reason }, evidence });
  } else if (blank.length > 0) {
    const needs = new Map(blank.map((w) => needOf(w)).map((n) => [n.what, n]));
    report.cannotVerify({ at, data, needs: [...needs.values()], evidence });
  } else report.pass();
}

const ratingOf = ({ part }: ResolvedWire): number | undefined =>
  part?.kind === 'wire' || part?.kind === 'cable' ? part.voltageMaxV : undefined;

const needOf = (w: ResolvedWire): Need =>
  w.part
    ? { what: `rated voltage of ${w.part.partNumber}`, at: partRef(w.part), field: 'voltageMaxV' }
    : { what: `part of ${w.wire.designator}`, at: wireRef(w), field: 'part' };

function unique<
  T extends { readonly type: string; readonly id: string; readonly cavity?: string | undefined },
>(refs: readonly T[]): readonly T[] {
  return [...new Map(refs.map((r) => [`${r.type} ${r.id} ${r.cavity ?? ''}`, r])).values()];
}
