import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { colourRepeat } from '@latchwork/core/rules/colour-repeat';
import { refText } from '@latchwork/core/rules/refs';
import { describe, expect, it } from 'vitest';

function check(change: (t: TinyDraft) => void): { at: string[]; passed: number | undefined } {
  const project = tiny(change);
  const result = checkHarness(deriveHarness(project), [colourRepeat]);
  return {
    at: result.findings.map((f) => f.objects.map((o) => refText(project, o)).join(' ')),
    passed: result.tally().get('colour-repeat')?.pass,
  };
}

const red = (t: TinyDraft) => {
  t.wire('W1').colour = { base: 'RD' };
  t.wire('W2').colour = { base: 'RD' };
};
const nameless = (t: TinyDraft) => {
  for (const w of ['W1', 'W2']) delete t.wire(w).signal;
};

describe('two red wires', () => {
  it('fail in each connector they share, and neither passes besides', () => {
    expect(check(red)).toEqual({ at: ['X1 W1 W2', 'X2 W1 W2'], passed: 0 });
  });

  it('without names, are told apart by their nets', () => {
    expect(check((t) => (red(t), nameless(t))).at).toEqual(['X1 W1 W2', 'X2 W1 W2']);
  });

  it('without names, are one where a splice joins them', () => {
    const joined = check((t) => {
      red(t);
      nameless(t);
      const splice = t.newId();
      t.project.splices.push({ id: splice, designator: 'XS1', position: { x: 60, y: 0 } });
      for (const w of ['W1', 'W2']) t.wire(w).ends[1] = { at: 'splice', splice };
    });
    expect(joined).toEqual({ at: [], passed: 1 });
  });

  it('are no repeat in one cavity alone', () => {
    const alone = check((t) => {
      red(t);
      t.wire('W2').ends[0] = { ...t.wire('W1').ends[0] };
      t.wire('W2').ends[1] = { at: 'free', position: { x: 0, y: 0 } };
    });
    expect(alone.at).toEqual([]);
  });
});

it('takes the colour of the core where the wire has none of its own', () => {
  const { at } = check((t) => {
    const cable = t.newId();
    const part = t.newId();
    const { size } = t.part('wire', 'WIRE-22');
    const core = (name: string) => ({ name, size, colour: { base: 'WH' as const } });
    t.project.parts.push({
      kind: 'cable',
      id: part,
      maker: 'Example Works (invented)',
      partNumber: 'CABLE',
      description: 'Two white cores',
      cores: [core('1'), core('2')],
    });
    t.project.cables.push({ id: cable, designator: 'WC1', part });
    for (const [w, name] of [['W1', '1'], ['W2', '2']] as const) {
      delete t.wire(w).colour;
      delete t.wire(w).part;
      t.wire(w).core = { cable, name };
    }
  }); // prettier-ignore
  expect(at).toEqual(['X1 W1 W2', 'X2 W1 W2']);
});
