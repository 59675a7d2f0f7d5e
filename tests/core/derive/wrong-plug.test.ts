import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { lookAlikesOf, type LookAlikes } from '@latchwork/core/derive/look-alikes';
import { wrongPlugNets } from '@latchwork/core/derive/wrong-plug';
import type { Signal } from '@latchwork/core/model/electrical';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { addTwin } from '@latchwork/core/rules/shared/example-twin';
import { describe, expect, it } from 'vitest';

const MARGIN_MM = 50;

const named = (project: Project, id: string): string =>
  project.connectors.find((c) => c.id === id)?.designator ?? '?';

/** "X5>X3 X1>X6": the wrong mates of each two places that can be confused. */
function confused(project: Project, marginMm = MARGIN_MM): string[] {
  const text = (l: LookAlikes): string =>
    l.wrong.map((j) => `${named(project, j.free)}>${named(project, j.into)}`).join(' ');
  return lookAlikesOf(deriveHarness(project), marginMm).map(text);
}

/** Two harnesses in one formboard: each end hangs on 300 mm, whose root is the other end of its run. */
function joined(t: TinyDraft, apartMm: number): void {
  addTwin(t, apartMm);
  const node = (d: string): string => t.project.nodes.find((n) => n.designator === d)!.id;
  t.project.segments.push({ id: t.newId(), designator: 'S3', from: node('N2'), to: node('N4') });
}

/** What happens when X1 and X5, whose mates are X3 and X6, are exchanged. */
function exchanged(change: (t: TinyDraft, signal: (name: string) => Partial<Signal>) => void): string[] {
  const project = tiny((t) => {
    addTwin(t);
    change(t, (name) => t.project.signals.find((s) => s.name === name)!);
  });
  const harness = deriveHarness(project);
  const pair = lookAlikesOf(harness, MARGIN_MM).find((l) =>
    l.wrong.some((j) => named(project, j.free) === 'X5' && named(project, j.into) === 'X3'),
  );
  return wrongPlugNets(harness, pair!).map(
    (j) => `${j.signals.map((s) => s.name).sort().join('+')} ${j.consequence}`, // prettier-ignore
  );
}

describe('look-alikes', () => {
  it('are every two places with a half of the harness that enters a half of the other', () => {
    expect(confused(tiny((t) => addTwin(t)))).toEqual([
      'X2>X1', 'X5>X3 X1>X6', 'X5>X2', 'X7>X1', 'X7>X4 X2>X8', 'X7>X5',
    ]); // prettier-ignore
  });

  it.each([
    ['keying', 'B'],
    ['interface', 'E4'],
    ['ways', 4],
    ['pitchMm', 2.5],
  ] as const)('are kept apart by another %s', (field, value) => {
    const project = tiny((t) => {
      addTwin(t);
      // The first harness alone gets other records.
      for (const [name, kind, like] of [
        ['X1', 'housing', 'H-SOCKET'],
        ['X3', 'header', 'HEADER'],
        ['X2', 'housing', 'H-PIN'],
        ['X4', 'housing', 'H-SOCKET'],
      ] as const) {
        const id = t.newId();
        t.project.parts.push({ ...t.part(kind, like), id, partNumber: `${like}-${name}`, [field]: value });
        t.connector(name).part = id;
      }
    });
    expect(confused(project)).toEqual(['X2>X1', 'X7>X5']);
  });

  it('are out of reach from where branch, loop and margin end before the place', () => {
    const apart = (marginMm: number): string[] =>
      confused(
        tiny((t) => joined(t, 400)),
        marginMm,
      );
    // X5 swings about N4, at 300/400, and X3 is at N1, at 0/0: 500 mm away, 300 mm of branch.
    expect(apart(199)).not.toContain('X5>X3 X1>X6');
    expect(apart(200)).toContain('X5>X3 X1>X6');
  });

  it('are taken to be within reach where a place is not on the formboard', () => {
    const project = tiny((t) => {
      joined(t, 5000);
      delete t.connector('X1').node;
    });
    const found = lookAlikesOf(deriveHarness(project), MARGIN_MM);
    const unknown = found.flatMap((l) => l.wrong.filter((j) => !j.reach));
    expect(unknown.length).toBeGreaterThan(0);
    for (const j of unknown)
      expect([named(project, j.free), named(project, j.into)].join(' ')).toMatch(/X1|X3/);
  });

  it('are the same object while only symbols move', () => {
    const project = tiny((t) => addTwin(t));
    const harness = deriveHarness(project);
    const before = lookAlikesOf(harness, MARGIN_MM);
    const moved = {
      ...project,
      connectors: project.connectors.map((c) => ({ ...c, position: { x: 1, y: 1 } })),
    };
    expect(lookAlikesOf(deriveHarness(moved, harness), MARGIN_MM)).toBe(before);
    const keyed = { ...project, parts: project.parts.map((p) => ({ ...p })) };
    expect(lookAlikesOf(deriveHarness(keyed), MARGIN_MM)).not.toBe(before);
  });
});

// Hand-made: X3 feeds SUP at 1 and its return RTN at 2, X6 feeds DATA at 1 and its return GND at 2.
describe('what meets when two ends are exchanged', () => {
  it.each<[string, string[], (signal: (name: string) => Partial<Signal>) => void]>([
    [
      'a supply on a signal; the other way round the signal meets a load without its supply',
      ['DATA+SUP supply-on-signal', 'DATA+SUP signals-exchanged'],
      () => undefined,
    ],
    [
      'a supply on the load of another, at one voltage',
      ['DATA+SUP loads-exchanged', 'DATA+SUP loads-exchanged'],
      (s) => Object.assign(s('DATA'), { class: 'power', voltageV: 12 }),
    ],
    [
      'a supply on the load of another, at two voltages',
      ['DATA+SUP wrong-voltage', 'DATA+SUP wrong-voltage'],
      (s) => Object.assign(s('DATA'), { class: 'power', voltageV: 5 }),
    ],
    [
      'a supply on a shield',
      ['DATA+SUP supply-shorted'],
      (s) => Object.assign(s('DATA'), { class: 'shield' }),
    ],
    [
      'a signal on another',
      ['DATA+SUP signals-exchanged', 'DATA+SUP signals-exchanged'],
      (s) => Object.assign(s('SUP'), { class: 'signal' }),
    ],
    [
      'two sources of which nobody says where they are',
      ['DATA+SUP supplies-joined', 'DATA+SUP supplies-joined'],
      (s) => {
        Object.assign(s('DATA'), { class: 'power', source: undefined });
        Object.assign(s('SUP'), { source: undefined });
      },
    ],
    [
      'nets at 0 V, which is harmless',
      [],
      (s) => {
        Object.assign(s('DATA'), { class: 'return' });
        Object.assign(s('SUP'), { class: 'return' });
      },
    ],
  ])('%s', (_name, expected, change) => {
    expect(exchanged((_t, signal) => change(signal))).toEqual(expected);
  });

  it('leaves out what the design itself joins', () => {
    expect(
      exchanged((t) => {
        for (const x of ['X6', 'X8']) t.connector(x).cavities = t.connector('X3').cavities;
      }),
    ).toEqual([]);
  });

  it('is worked out again only when one of its nets changed', () => {
    const project = tiny((t) => addTwin(t));
    const harness = deriveHarness(project);
    const [pair] = lookAlikesOf(harness, MARGIN_MM).slice(1);
    const before = wrongPlugNets(harness, pair!);
    const noted = { ...project, connectors: project.connectors.map((c) => ({ ...c, note: 'x' })) };
    expect(wrongPlugNets(deriveHarness(noted, harness), pair!)).toEqual(before);
    expect(wrongPlugNets(harness, pair!)).toBe(wrongPlugNets(harness, pair!));
    const signals = project.signals.map((s) => (s.name === 'DATA' ? { ...s, class: 'power' as const } : s));
    const after = wrongPlugNets(deriveHarness({ ...project, signals }, harness), pair!);
    expect(after.map((j) => j.consequence)).not.toEqual(before.map((j) => j.consequence));
  });
});
