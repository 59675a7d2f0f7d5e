import type { Supply } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import { wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { judgeLength, judgePassedOn } from './shared/earth-path';
import { fact, partFact, partNeed } from './shared/evidence';
import { sup } from './shared/example-signals';
import { addFuse } from './shared/example-fuse';
import { setLimit } from './shared/example-route';
import { carriedIn, firstMateText, isFirstMate } from './shared/first-mate';
import { mateSides } from './shared/mate-sides';
import { fuseRef, signalFact, signalRef } from './shared/supply-words';

/**
 * Speaks of signals of class protective earth: of fuses in their wires, of each mate that they cross, of devices that pass
 * them on, and of their length beside the wires that run with them.
 */
export const protectiveEarth: Rule<'supply'> = {
  meta: {
    id: 'protective-earth',
    revision: 2,
    severity: 'critical',
    summary:
      'Protective earth is never fused, meets first and parts last in every mate, does not lead through a device that can be taken out, and is the last to be torn off.',
    why: 'Nobody notices that a protective earth is open, be it by a fuse, a plug, or a device that was taken out for repair: everything works on. Then the first fault puts the enclosure at full voltage, and whoever touches it is the fuse.',
    source:
      'IEC 60204-1, clause on the protective bonding circuit; IEC 61984 (first make, last break), title and scope; common practice: longest at its ends',
    message: '{{signal}}, a protective earth, {{reason}}',
    unknown: 'Whether {{signal}}, a protective earth, {{question}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    for (const signal of new Set([...supply.feeds, ...(supply.returnSignal ? [supply.returnSignal] : [])]))
      if (signal.class === 'protective-earth') judge(signal, supply, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no protective earth', project: tiny() },
      { name: 'first to meet at both mates', project: tiny((t) => earth(t, ['1'])) },
    ],
    bad: [
      {
        name: 'another position meets first',
        project: tiny((t) => earth(t, ['2'])),
        expect: ['X1–X3', 'X2–X4'],
      },
      { name: 'none meets first', project: tiny((t) => earth(t, [])), expect: ['X1–X3', 'X2–X4'] },
      {
        name: 'shorter than the wire beside it',
        project: tiny((t) => {
          earth(t, ['1']);
          t.wire('W1').lengthMm = 290;
          t.wire('W2').lengthMm = 300;
        }),
        expect: ['W1'],
      },
      {
        name: 'as long as the wire beside it, where 20 mm more are asked for',
        project: tiny((t) => {
          earth(t, ['1']);
          setLimit(t, 'earth-extra-length-min', 20);
        }),
        expect: ['W1'],
      },
      {
        name: 'passed on by a device that has it on two connectors',
        project: tiny((t) => {
          earth(t, ['1']);
          passedOn(t);
        }),
        expect: ['A2'],
      },
      {
        name: 'a fuse in its wire',
        project: tiny((t) => {
          earth(t, ['1']);
          addFuse(t, 3);
        }),
        expect: ['F1'],
      },
    ],
    unknown: [
      {
        name: 'a wire beside it whose length nobody knows',
        project: tiny((t) => {
          earth(t, ['1']);
          t.wire('W1').lengthMm = 300;
          t.project.segments = [];
        }),
        expect: ['W1'],
      },
      {
        name: 'on two connectors of a device, and nobody says where it comes from',
        project: tiny((t) => {
          earth(t, ['1']);
          passedOn(t);
          delete sup(t).source;
        }),
        expect: ['A2'],
      },
      {
        name: 'the records do not say which positions meet first',
        project: tiny((t) => earth(t, undefined)),
        expect: ['X1–X3', 'X2–X4'],
      },
    ],
  }),
};

/** A2 has the earth a second time, at X4:3, for a wire that leads on. */
function passedOn(t: TinyDraft): void {
  t.connector('X4').cavities = [
    ...t.connector('X4').cavities.filter((e) => e.cavity !== '3'),
    { cavity: '3', signal: sup(t).id },
  ];
  const w1 = t.wire('W1');
  t.project.wires.push({
    id: t.newId(),
    designator: 'W3',
    signal: sup(t).id,
    colour: { base: 'GNYE' },
    ...(w1.part === undefined ? {} : { part: w1.part }),
    ends: [
      { at: 'cavity', connector: t.connector('X2').id, cavity: '3' },
      { at: 'free', position: { x: 60, y: 40 } },
    ],
    lengthMm: 200,
  });
}

function earth(t: TinyDraft, first: string[] | undefined): void {
  const pe = sup(t);
  pe.class = 'protective-earth';
  pe.voltageV = 0;
  delete pe.returnsOn;
  if (!first) return;
  for (const p of t.project.parts)
    if (p.kind === 'housing' || p.kind === 'header') p.firstMatePositions = first;
}

function judge(signal: Signal, supply: Supply, report: Report, context: RuleContext): void {
  const mine = supply.nets.filter((n) => n.signals.includes(signal));
  judgePassedOn(signal, mine, report);
  judgeLength(signal, supply, mine, report, context);
  const cls = signalFact(signal, 'class', signal.class);
  for (const fuse of supply.fuses) {
    const wire = mine.flatMap((n) => n.wires).find((w) => w.wire.id === fuse.wire);
    if (!wire) continue;
    report.fail({
      at: [fuseRef(fuse), wireRef(wire), signalRef(signal)],
      data: {
        signal: signal.name,
        reason: `is broken by the fuse ${fuse.designator} in ${wire.wire.designator}`,
      },
      evidence: [...cls, ...fact('fuse', fuse.designator, `project, ${wire.wire.designator}`)],
    });
  }
  for (const mate of supply.mates) {
    const sides = mateSides(mate);
    const meetings = carriedIn(mate, mine, signal);
    if (!sides || meetings.length === 0) continue;
    const halves = [sides.a, sides.b];
    const at = [...sides.at, signalRef(signal)];
    const data = { signal: signal.name, ...sides.names };
    const evidence = [
      ...cls,
      ...halves.flatMap((h) => partFact(h, `${h.partNumber} meets first at`, firstMateText(h))),
    ];
    const first = meetings.map((m) => isFirstMate(sides.a, sides.b, m));
    if (first.includes(true)) report.pass();
    else if (first.includes(undefined)) {
      const blank = halves.filter((h) => h.firstMatePositions === undefined);
      const needs = blank.map((h) => partNeed(h, 'firstMatePositions', 'positions that meet first'));
      const question = `meets first at ${sides.names.a} and ${sides.names.b}`;
      report.cannotVerify({ at, data: { ...data, question }, needs, evidence });
    } else {
      const reason = `meets and parts with the others at ${sides.names.a} and ${sides.names.b}`;
      report.fail({ at, data: { ...data, reason }, evidence });
    }
  }
}
