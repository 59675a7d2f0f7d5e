import { describe, expect, it, test } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { testCoverage } from '@latchwork/core/derive/harness-test/coverage';
import { FAULT_KINDS, seededFaults } from '@latchwork/core/derive/harness-test/faults';
import { firstFailing, indexSteps } from '@latchwork/core/derive/harness-test/simulate';
import { testModelOf } from '@latchwork/core/derive/harness-test/test-model';
import { testSteps } from '@latchwork/core/derive/harness-test/test-plan';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { generateProject } from '../../../generate/harness-generator';
import { demoFromFile } from '../../demos/demo-files';

const DEMOS = ['bench-lamp', 'weather-station', 'workshop-faults'];

describe('what the test finds', () => {
  test.each(DEMOS)('%s: every open, short, swap and wrong cavity between different nets', (name) => {
    const harness = deriveHarness(demoFromFile(name));
    const { counts, missed } = testCoverage(harness);
    const model = testModelOf(harness);
    expect(FAULT_KINDS.reduce((n, k) => n + counts[k].made, 0)).toBeGreaterThan(50);
    for (const kind of ['open', 'short', 'wrong-cavity'] as const)
      expect([kind, counts[kind].found]).toEqual([kind, counts[kind].made]);
    for (const { fault } of missed) {
      const nets = new Set(fault.moves.map((m) => model.netOfKey.get(m.wire.keys[0])));
      expect([fault.kind, nets.size, fault.text]).toEqual(['swap', 1, fault.text]);
    }
  });

  it('names the swap of two contacts of the same net, which no electrical step can tell', () => {
    const { missed } = testCoverage(deriveHarness(demoFromFile('workshop-faults')));
    expect(missed.map((m) => m.fault.text)).toEqual(['X7:2 and X7:3 exchanged', 'X7:4 and X7:5 exchanged']);
    expect(missed[0]?.reason).toContain('same net');
  });

  it('names a wire that another one in parallel hides', () => {
    const { missed } = testCoverage(deriveHarness(tiny(inParallel)));
    expect(missed.map((m) => m.fault.text)).toEqual(expect.arrayContaining(['W1 missing', 'W2 missing']));
    expect(missed[0]?.reason).toContain('another wire of the same net');
  });

  it('names the opens of a net that has one point only', () => {
    const { missed } = testCoverage(deriveHarness(tiny((t) => endsNowhere(t))));
    expect(missed.some((m) => m.reason.includes('fewer than two points'))).toBe(true);
  });

  it.each([
    ['a demo', () => demoFromFile('workshop-faults')],
    ['a random harness', () => generateProject({ wires: 60, seed: 5 })],
  ])('finds with the touched nets alone what it finds with every net built anew: %s', (_, project) => {
    const harness = deriveHarness(project());
    const model = testModelOf(harness);
    const index = indexSteps(model, testSteps(model));
    for (const fault of seededFaults(harness, model))
      expect([fault.text, firstFailing(index, fault) !== undefined]).toEqual([
        fault.text,
        firstFailing(index, fault, true) !== undefined,
      ]);
  });

  it('passes a harness without a fault, also where every step is run', () => {
    const harness = deriveHarness(demoFromFile('weather-station'));
    const model = testModelOf(harness);
    const none = { kind: 'open', text: 'none', moves: [], bridges: [], wires: [] } as const;
    expect(firstFailing(indexSteps(model, testSteps(model)), none, true)).toBeUndefined();
  });

  it('loses faults when a step is taken out of the test', () => {
    const harness = deriveHarness(tiny());
    const model = testModelOf(harness);
    const opens = [...seededFaults(harness, model)].filter((f) => f.text === 'W1 missing');
    const without = testSteps(model).filter((s) => s.kind !== 'continuity');
    expect(opens.map((f) => firstFailing(indexSteps(model, testSteps(model)), f)?.kind)).toEqual([
      'continuity',
    ]);
    expect(opens.map((f) => firstFailing(indexSteps(model, without), f))).toEqual([undefined]);
  });
});

/** W2 lies beside W1, in contacts of its own. */
function inParallel(t: TinyDraft): void {
  for (const end of t.wire('W2').ends) if (end.at === 'cavity') end.cavity = '1';
}

/** W1 ends in a splice in which no other wire ends. */
function endsNowhere(t: TinyDraft): void {
  const id = t.newId();
  t.project.splices.push({ id, designator: 'XS1', position: { x: 0, y: 0 } });
  t.wire('W1').ends[1] = { at: 'splice', splice: id, stripLengthMm: 5 };
}
