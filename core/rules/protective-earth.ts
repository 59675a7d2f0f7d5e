import type { Supply } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import { wireRef } from './refs';
import type { Report, Rule } from './rule';
import { fact, partFact, partNeed } from './shared/evidence';
import { sup } from './shared/example-signals';
import { addFuse } from './shared/example-fuse';
import { carriedIn, firstMateText, isFirstMate } from './shared/first-mate';
import { mateSides } from './shared/mate-sides';
import { fuseRef, signalFact, signalRef } from './shared/supply-words';

/** Speaks of signals of class protective earth: of fuses in their wires, and of each mate that they cross. */
export const protectiveEarth: Rule<'supply'> = {
  meta: {
    id: 'protective-earth',
    revision: 1,
    severity: 'critical',
    summary: 'Protective earth is never fused, and meets first and parts last in every mate.',
    why: 'Nobody notices that a protective earth is open: everything works on. Then the first fault puts the enclosure at full voltage, and whoever touches it is the fuse.',
    source:
      'IEC 60204-1, clause on the protective bonding circuit; IEC 61984 (first make, last break), title and scope',
    message: '{{signal}}, a protective earth, {{reason}}',
    unknown:
      'Whether {{signal}}, a protective earth, meets first at {{a}} and {{b}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report) {
    for (const signal of new Set([...supply.feeds, ...(supply.returnSignal ? [supply.returnSignal] : [])]))
      if (signal.class === 'protective-earth') judge(signal, supply, report);
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
        name: 'the records do not say which positions meet first',
        project: tiny((t) => earth(t, undefined)),
        expect: ['X1–X3', 'X2–X4'],
      },
    ],
  }),
};

function earth(t: TinyDraft, first: string[] | undefined): void {
  const pe = sup(t);
  pe.class = 'protective-earth';
  pe.voltageV = 0;
  delete pe.returnsOn;
  if (!first) return;
  for (const p of t.project.parts)
    if (p.kind === 'housing' || p.kind === 'header') p.firstMatePositions = first;
}

function judge(signal: Signal, supply: Supply, report: Report): void {
  const mine = supply.nets.filter((n) => n.signals.includes(signal));
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
      report.cannotVerify({ at, data, needs, evidence });
    } else {
      const reason = `meets and parts with the others at ${sides.names.a} and ${sides.names.b}`;
      report.fail({ at, data: { ...data, reason }, evidence });
    }
  }
}
