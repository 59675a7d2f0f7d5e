import type { Net, NetPoint, ResolvedWire } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny } from '../model/tiny';
import { cavityName, cavityRef, wireRef } from './refs';
import type { Report, Rule } from './rule';
import { declaredAtPositions, type Declaration } from './shared/declared-signals';

/**
 * Compares what a wire is for with what the interfaces say at the positions it reaches. Where the positions
 * themselves contradict each other that is `net-conflict`, and this rule says nothing. An interface is a connector
 * that declares a signal at some position; where a net reaches none there is nothing to compare.
 */
export const netEnds: Rule<'net'> = {
  meta: {
    id: 'net-ends',
    revision: 1,
    severity: 'major',
    summary: 'A wire connects the positions at which the interfaces declare its signal.',
    why: 'A wire in the wrong cavity leaves one function dead and puts another where nothing expects it. It passes every test that was learned from a harness with the same fault.',
    source: 'common practice: the wiring is compared with the interface tables of both devices',
    message: '{{wires}} ({{signal}}) reaches {{places}}, where the interface has {{declared}}',
    unknown: 'Whether {{signal}} belongs at {{places}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'net',
  check(net, report) {
    const declared = declaredAtPositions(net);
    if (net.wires.length === 0 || declared.length > 1) return;
    const only = declared[0];
    const named = net.wires.filter((w) => w.signal !== undefined);
    const faults = [
      ...(only ? namedOtherwise(only, named) : namedFarAway(net, named)),
      ...heldEmpty(net, only?.signal ?? named[0]?.signal),
    ];
    for (const f of faults) report.fail(f);
    const open = undeclared(net).filter((p) => !stateOf(net, p));
    if (open.length > 0) cannotTell(report, open, only?.signal ?? named[0]?.signal);
    else if (faults.length === 0 && only) report.pass();
  },
  examples: () => ({
    good: [
      { name: 'wires named as their positions', project: tiny() },
      {
        name: 'wires that bear no name',
        project: tiny((t) => {
          delete t.wire('W1').signal;
          delete t.wire('W2').signal;
        }),
      },
      {
        name: 'no interface known at either end',
        project: tiny((t) => {
          for (const d of ['X3', 'X4']) t.connector(d).cavities = [{ cavity: '3', state: 'empty' }];
          for (const s of t.project.signals) delete s.source;
        }),
      },
    ],
    bad: [
      {
        name: 'a wire named after another signal than its positions carry',
        project: tiny((t) => {
          t.wire('W1').signal = t.wire('W2').signal;
        }),
        expect: ['W1'],
      },
      {
        name: 'one cavity beside, where the device has nothing',
        project: tiny((t) => {
          t.connector('X4').cavities.push({ cavity: '3', state: 'empty' });
          const end = t.wire('W2').ends[1];
          if (end.at === 'cavity') end.cavity = '3';
        }),
        expect: ['X4:3'],
      },
      {
        name: 'a signal that never reaches where it is fed',
        project: tiny((t) => {
          t.project.mates = [];
        }),
        expect: ['W1', 'W2'],
      },
    ],
    unknown: [
      {
        name: 'the interface says nothing about one position',
        project: tiny((t) => {
          t.connector('X4').cavities = t.connector('X4').cavities.filter((c) => c.cavity !== '1');
        }),
        expect: ['X4:1'],
      },
    ],
  }),
};

type Fault = Parameters<Report['fail']>[0];

function namedOtherwise(only: Declaration, named: readonly ResolvedWire[]): Fault[] {
  return named
    .filter((w) => w.signal !== only.signal)
    .map((w) => ({
      at: [wireRef(w), only.ref],
      data: wordsOf([w], w.signal, [only.name], only.signal.name),
      evidence: [nameOf(w), only.evidence],
    }));
}

/** No position of the net declares the name its wires bear, and the signal is known to be fed elsewhere. */
function namedFarAway(net: Net, named: readonly ResolvedWire[]): Fault[] {
  return named
    .filter((w) => w.signal?.source)
    .map((w) => ({
      at: [wireRef(w)],
      data: wordsOf([w], w.signal, net.points.map(cavityName), 'no signal'),
      evidence: [nameOf(w)],
    }));
}

/** Positions of an interface that are declared empty, blocked or spare, and that a wire reaches all the same. */
function heldEmpty(net: Net, signal: Signal | undefined): Fault[] {
  return undeclared(net).flatMap((p) => {
    const state = stateOf(net, p);
    if (!state) return [];
    const source = `interface of ${p.connector.connector.designator}`;
    return [
      {
        at: [cavityRef(p), ...net.wires.map(wireRef)],
        data: wordsOf(net.wires, signal, [cavityName(p)], `no signal (${state})`),
        evidence: [{ label: `state of ${cavityName(p)}`, value: state, source }],
      },
    ];
  });
}

function cannotTell(report: Report, open: readonly NetPoint[], signal: Signal | undefined): void {
  report.cannotVerify({
    at: open.map(cavityRef),
    data: { signal: signal?.name ?? 'the wire', places: open.map(cavityName).join(', ') },
    needs: open.map((p) => ({
      what: `signal of the interface at ${cavityName(p)}`,
      at: cavityRef(p),
      field: 'signal',
    })),
  });
}

const nameOf = (w: ResolvedWire): { label: string; value: string; source: string } => ({
  label: `signal of wire ${w.wire.designator}`,
  value: w.signal?.name ?? '',
  source: 'typed',
});

function wordsOf(
  wires: readonly ResolvedWire[],
  signal: Signal | undefined,
  places: readonly string[],
  declared: string,
): { wires: string; signal: string; places: string; declared: string } {
  return {
    wires: wires.map((w) => w.wire.designator).join(', '),
    signal: signal?.name ?? 'no name',
    places: places.join(', ') || 'no connector',
    declared,
  };
}

/** Positions without a signal on a connector that declares signals at others. */
const undeclared = (net: Net): readonly NetPoint[] =>
  net.points.filter((p) => !p.declared && p.connector.connector.cavities.some((c) => c.signal !== undefined));

/** What stands at the position; a cavity in which a wire ends is wired, whatever stands there. */
function stateOf(net: Net, p: NetPoint): string | undefined {
  const { id, cavities } = p.connector.connector;
  const wired = net.wires.some((w) =>
    w.wire.ends.some((e) => e.at === 'cavity' && e.connector === id && e.cavity === p.cavity),
  );
  return wired ? undefined : cavities.find((c) => c.cavity === p.cavity)?.state;
}
