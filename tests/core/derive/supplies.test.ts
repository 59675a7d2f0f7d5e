import { produce, type Draft } from 'immer';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness, Supply } from '@latchwork/core/derive/harness';
import { supplyCurrents } from '@latchwork/core/derive/supply-currents';
import { suppliesOf } from '@latchwork/core/derive/supplies';
import { wireAmpacity } from '@latchwork/core/derive/wire-ampacity';
import { AEROSPACE_LIMITS } from '@latchwork/core/model/limit-sets/aerospace';
import { GENERAL_LIMITS } from '@latchwork/core/model/limit-sets/general';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { describe, expect, it } from 'vitest';
import { generateProject } from '../../generate/harness-generator';

const namesOf = (h: Harness): (string | undefined)[][] =>
  h.supplies.map((s) => [...s.feeds.map((f) => f.name), s.returnSignal?.name]);

describe('the supplies of a harness', () => {
  it('are the signals that return on one, with their return', () => {
    expect(namesOf(deriveHarness(tiny()))).toEqual([['SUP', 'RTN']]);
  });

  it('hold a signal without a return by itself', () => {
    const project = tiny((t) => {
      for (const s of t.project.signals) delete s.returnsOn;
    });
    expect(namesOf(deriveHarness(project))).toEqual([
      ['SUP', undefined],
      ['RTN', undefined],
    ]);
  });

  it('know the wires, connectors, mates and fuses of their nets', () => {
    const project = tiny((t) => {
      t.project.fuses.push({ id: t.newId(), designator: 'F1', wire: t.wire('W1').id, ratedA: 2 });
    });
    const [s] = deriveHarness(project).supplies;
    expect(s?.wires.map((w) => w.wire.designator)).toEqual(['W1', 'W2']);
    expect(s?.uses.map((u) => u.resolved.connector.designator).sort()).toEqual(['X1', 'X2', 'X3', 'X4']);
    expect(s?.mates).toHaveLength(2);
    expect(s?.fuses.map((f) => f.designator)).toEqual(['F1']);
  });
});

describe('an edit', () => {
  const before = generateProject({ wires: 400 });
  const edits: readonly [string, (p: Draft<Project>) => void][] = [
    ['a wire gets longer', (p) => void (p.wires[0]!.lengthMm = 1234)],
    ['a signal draws more', (p) => void (p.signals[0]!.currentA = 0.4)],
    ['a connector is moved', (p) => void (p.connectors[0]!.position.x += 5)],
    ['a mate is taken off', (p) => void p.mates.splice(3, 1)],
    [
      'a fuse is put in',
      (p) => void p.fuses.push({ id: p.id, designator: 'F1', wire: p.wires[0]!.id, ratedA: 1 }),
    ],
    ['a signal returns elsewhere', (p) => void delete p.signals[0]!.returnsOn],
    ['the title changes', (p) => void (p.titleBlock.title = 'Another')],
  ];

  it.each(edits)('gives the same supplies as from nothing: %s', (_name, edit) => {
    const first = deriveHarness(before);
    void first.supplies;
    const after = deriveHarness(produce(before, edit), first);
    const fresh = deriveHarness(after.project);
    expect(shapeOf(after.supplies)).toEqual(shapeOf(fresh.supplies));
  });

  it.each(edits)('leaves supplies that it does not touch as they are: %s', (_name, edit) => {
    const first = deriveHarness(before);
    const was = new Set(first.supplies);
    const after = deriveHarness(produce(before, edit), first);
    const made = after.supplies.filter((s) => !was.has(s));
    // A half has up to twelve ways, and each of its two mates one half more.
    expect(made.length).toBeLessThanOrEqual(4 * 12);
    expect(after.supplies.length).toBeGreaterThan(300);
  });

  it('solves again only what it touches', () => {
    const first = deriveHarness(before);
    const currents = new Map(first.supplies.map((s) => [s.key, supplyCurrents(s, GENERAL_LIMITS)]));
    const after = deriveHarness(
      produce(before, (p) => void (p.signals[0]!.currentA = 0.4)),
      first,
    );
    const again = after.supplies.filter((s) => supplyCurrents(s, GENERAL_LIMITS) !== currents.get(s.key));
    expect(again.flatMap((s) => s.feeds.map((f) => f.name))).toContain('SIG1');
    expect(again.length).toBeLessThanOrEqual(12 * 4);
  });

  it('costs nothing where nobody asks: the list is worked out when first read', () => {
    const project = tiny();
    const harness = deriveHarness(project);
    expect(harness.supplies).toBe(harness.supplies);
    expect(suppliesOf(harness, harness.supplies)).toBe(harness.supplies);
  });
});

const shapeOf = (list: readonly Supply[]): unknown =>
  list.map((s) => ({
    key: s.key,
    feeds: s.feeds.map((f) => f.id),
    returnSignal: s.returnSignal?.id,
    nets: s.nets.map((n) => n.key),
    wires: s.wires.map((w) => w.wire),
    uses: s.uses.map((u) => u.resolved.connector.id),
    mates: s.mates.map((m) => m.mate.id),
    fuses: s.fuses,
    parts: s.parts.map((p) => p.id),
  }));

describe('the currents of a supply', () => {
  const only = (project: Project): Supply => deriveHarness(project).supplies[0]!;
  const ampsOf = (s: Supply): (number | undefined)[] =>
    s.wires.map((w) => supplyCurrents(s, GENERAL_LIMITS).ofWire(w)?.currentA);

  it('run out and back', () => {
    const s = only(tiny());
    expect(supplyCurrents(s, GENERAL_LIMITS).solved.ok).toBe(true);
    for (const a of ampsOf(s)) expect(a).toBeCloseTo(1, 9);
  });

  it('are taken whole from the signals where the circuit cannot be solved', () => {
    const s = only(
      tiny((t) => {
        delete t.project.signals[0]!.source;
        t.project.signals[0]!.currentA = 2;
      }),
    );
    expect(supplyCurrents(s, GENERAL_LIMITS).solved.ok).toBe(false);
    // The return states 1 A; what is fed into it counts.
    expect(ampsOf(s)).toEqual([2, 2]);
  });

  it('are unknown where a feed states none and the return neither', () => {
    const s = only(
      tiny((t) => {
        for (const signal of t.project.signals) delete signal.currentA;
      }),
    );
    expect(ampsOf(s)).toEqual([undefined, undefined]);
  });
});

describe('what a wire may carry', () => {
  const w1 = (change: Parameters<typeof tiny>[0]) => deriveHarness(tiny(change)).wires[0]!;

  it.each([
    // FAA AC 43.13-1B table 11-9, column 105 C: 22 AWG 3 A, 24 AWG 2.5 A, 20 AWG 4 A.
    [22, 3],
    [24, 2.5],
    [20, 4],
  ])('%d AWG: %d A by AC 43.13-1B table 11-9', (gauge, currentA) => {
    const wire = w1((t) => void (t.part('wire', 'WIRE-22').size = { system: 'awg', gauge }));
    for (const set of [GENERAL_LIMITS, AEROSPACE_LIMITS])
      expect(wireAmpacity(wire, set)).toMatchObject({ ok: true, value: { currentA, basis: 'table' } });
  });

  it('a size that the table lacks: the limit on current density, said to be an estimate', () => {
    const wire = w1((t) => void (t.part('wire', 'WIRE-22').size = { system: 'mm2', areaMm2: 0.35 }));
    const may = wireAmpacity(wire, GENERAL_LIMITS);
    expect(may).toMatchObject({
      ok: true,
      value: { currentA: 4 * 0.355, basis: 'density', verified: false },
    });
    expect(may.ok && may.value.text).toContain('estimate');
    expect(wireAmpacity(wire, AEROSPACE_LIMITS).ok).toBe(false);
  });
});
