import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { liveHalves } from '@latchwork/core/derive/energised';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { addFuse } from '@latchwork/core/rules/shared/example-fuse';
import { setLimit } from '@latchwork/core/rules/shared/example-route';
import { rtn, sup } from '@latchwork/core/rules/shared/example-signals';
import { addTwin } from '@latchwork/core/rules/shared/example-twin';

const IDS = [
  'wrong-plug', 'live-pins-exposed', 'mate-under-power', 'protective-earth', 'reserved-colour', 'pair-kept', 'shield-ends',
  'drain-wire', 'noise-classes', 'redundant-together', 'voltage-classes', 'wire-class',
]; // prettier-ignore
const rulesOf = (...ids: string[]) => RULES.filter((r) => ids.includes(r.meta.id));
const found = (project: Project, ...ids: string[]): string[] =>
  checkHarness(deriveHarness(project), rulesOf(...ids)).findings.map((f) => f.rule);

describe('the limits themselves', () => {
  it.each([
    [50, false],
    [50.5, true],
    [-51, true],
  ])('%d V on pins is hazardous: %s', (voltageV, isHazardous) => {
    const project = tiny((t) => void (sup(t).voltageV = voltageV));
    expect(found(project, 'live-pins-exposed').length > 0).toBe(isHazardous);
  });

  it.each([
    [300, 0],
    [299.9, 1],
  ])('noisy and quiet for 300 mm, at most %d mm: %d findings', (limitMm, count) => {
    const project = tiny((t) => {
      sup(t).noiseClass = 'noisy';
      rtn(t).noiseClass = 'quiet';
      setLimit(t, 'noise-together-max', limitMm);
    });
    expect(found(project, 'noise-classes')).toHaveLength(count);
  });

  it.each([
    [10, 0],
    [11, 1],
  ])('a pair with %d mm of difference: %d findings', (moreMm, count) => {
    const project = tiny((t) => {
      sup(t).pairedWith = rtn(t).id;
      const wires = [t.wire('W1').id, t.wire('W2').id];
      t.project.groups.push({ id: t.newId(), designator: 'WG1', form: 'twisted', wires, layMm: 25 });
      t.wire('W1').lengthMm = 400;
      t.wire('W2').lengthMm = 400 + moreMm;
    });
    expect(found(project, 'pair-kept')).toHaveLength(count);
  });

  it('orange is not asked for until a voltage is given', () => {
    const orange = (fromV: number): Project =>
      tiny((t) => {
        setLimit(t, 'orange-voltage-from', fromV);
        t.wire('W2').colour = { base: 'OG' };
      });
    expect(found(orange(0), 'reserved-colour')).toEqual([]);
    expect(found(orange(60), 'reserved-colour')).toEqual(['reserved-colour']);
  });
});

it('a half is live where it lies between the source and an open mate, before or behind a fuse', () => {
  const harness = deriveHarness(tiny((t) => void addFuse(t, 3)));
  const supply = harness.supplies.find((s) => s.feeds.some((f) => f.name === 'SUP'))!;
  const halves = liveHalves(supply, supply.feeds[0]!);
  expect(halves.map((h) => [h.use.resolved.connector.designator, h.cavity, h.isFused])).toEqual([
    ['X3', '1', false],
    ['X2', '1', true],
  ]);
});

describe('after any edits', () => {
  const start = tiny((t) => {
    addTwin(t);
    sup(t).noiseClass = 'noisy';
    t.project.signals.find((s) => s.name === 'DATA')!.redundantTo = sup(t).id;
  });
  const id = (d: string): string => start.connectors.find((c) => c.designator === d)!.id;
  const signal = (name: string): string => start.signals.find((s) => s.name === name)!.id;
  const wire = (d: string): string => start.wires.find((w) => w.designator === d)!.id;
  const edits: readonly (Call | 'undo')[] = [
    'undo',
    { id: 'objects.move', args: { moves: [{ id: id('X5'), to: { x: 5, y: 200 } }] } },
    { id: 'connector.edit', args: { ids: [id('X5')], change: { serviceLoopMm: 30 } } },
    { id: 'connector.edit', args: { ids: [id('X1')], change: { node: null } } },
    { id: 'connector.edit', args: { ids: [id('X7')], change: { designator: 'X77' } } },
    { id: 'objects.remove', args: { ids: [start.mates[2]!.id] } },
    { id: 'signal.edit', args: { id: signal('DATA'), change: { class: 'power', voltageV: 110 } } },
    { id: 'signal.edit', args: { id: signal('DATA'), change: { noiseClass: 'quiet' } } },
    {
      id: 'signal.edit',
      args: { id: signal('SUP'), change: { liveMating: true, pairedWith: signal('RTN') } },
    },
    { id: 'wire.edit', args: { ids: [wire('W3')], change: { colour: { base: 'GNYE' } } } },
    { id: 'objects.remove', args: { ids: [wire('W4')] } },
  ];

  it('the findings are those of a project that was never seen before', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...edits), { minLength: 1, maxLength: 8 }), (calls) => {
        const rules = rulesOf(...IDS);
        let history = startHistory(start);
        let harness = deriveHarness(start);
        let check: CheckResult = checkHarness(harness, rules);
        for (const call of calls) {
          if (call === 'undo') history = undo(history);
          else {
            const done = dispatch(history, call, { newId: countingIds(70_000), catalogue: [] });
            if (done.ok) history = done.value;
          }
          harness = deriveHarness(history.project, harness);
          check = checkHarness(harness, rules, check);
          // A copy shares no object with it, so nothing can be remembered for it.
          const fresh = checkHarness(deriveHarness(structuredClone(history.project)), rules);
          expect(check.findings).toEqual(fresh.findings);
        }
      }),
      { numRuns: 40 },
    );
  });
});
