import { describe, expect, it } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo, type History } from '@latchwork/core/commands/history';
import { countingIds } from '@latchwork/core/model/ids';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';

const label = (n: number, bundleMaxMm: number): Part => ({
  kind: 'label',
  id: `00000000-0000-4000-8000-0000000e000${n}`,
  maker: 'Example Works (invented)',
  partNumber: `L-${bundleMaxMm}`,
  description: 'Invented label',
  widthMm: 25,
  heightMm: 12,
  bundleMaxMm,
});
const CATALOGUE = [label(1, 12), label(2, 1), label(3, 6)];

function apply(history: History, call: Call): History {
  const done = dispatch(history, call, { newId: countingIds(8_000_000), catalogue: CATALOGUE });
  if (!done.ok) throw new Error(done.problem.reason);
  return done.value;
}
const refusal = (project: Project, call: Call): string | null => {
  const done = dispatch(startHistory(project), call, { newId: countingIds(8_000_000), catalogue: CATALOGUE });
  return done.ok ? null : done.problem.reason;
};
const marked = (labelMethod: Project['labelMethod'], edit?: Parameters<typeof tiny>[0]): Project => ({
  ...tiny(edit),
  ...(labelMethod ? { labelMethod } : {}),
});
const MAKE: Call = { id: 'labels.make', args: {} };
const textsOf = (p: Project): string[] => p.labels.map((l) => l.text).sort();

describe('making labels', () => {
  it('asks for a method first', () => {
    expect(refusal(marked(undefined), MAKE)).toContain('choose the method first');
  });

  it('labels every end and wired connector in one step back', () => {
    const before = startHistory(marked('local-end'));
    const after = apply(before, MAKE);
    expect(textsOf(after.project)).toEqual(['X1', 'X1:1', 'X1:2', 'X2', 'X2:1', 'X2:2']);
    expect(after.project.labels.every((l) => l.made)).toBe(true);
    expect(undo(after).project).toEqual(before.project);
  });

  it('takes the smallest label that goes round, and none where the diameter is not known', () => {
    const known = apply(startHistory(marked('identification')), MAKE).project;
    const number = (p: Project, id: string | undefined) => p.parts.find((x) => x.id === id)?.partNumber;
    for (const l of known.labels) if (l.on.at === 'wire-end') expect(number(known, l.part)).toBe('L-6');
    const unknown = apply(
      startHistory(
        marked('identification', (t) => {
          for (const p of t.project.parts)
            if (p.kind === 'wire') {
              delete p.odMm;
              delete p.odMaxMm;
            }
        }),
      ),
      MAKE,
    ).project;
    expect(unknown.labels.map((l) => l.part)).toEqual(unknown.labels.map(() => undefined));
  });

  it('follows a new method and a new name, and refuses when there is nothing to do', () => {
    let h = apply(startHistory(marked('identification')), MAKE);
    expect(refusal(h.project, MAKE)).toContain('6 labels follow the method already');
    h = apply(h, { id: 'project.edit', args: { change: { labelMethod: 'remote-end' } } });
    const w1 = h.project.wires.find((w) => w.designator === 'W1')?.id ?? '';
    h = apply(h, { id: 'labels.make', args: { ids: [w1] } });
    const on = (p: Project, wire: string) =>
      p.labels.flatMap((l) => (l.on.at === 'wire-end' && l.on.wire === wire ? [l.text] : []));
    expect(on(h.project, w1)).toEqual(['X2:1', 'X1:1']);
    expect(h.project.labels).toHaveLength(6);
  });

  it('keeps a text that was typed until it is asked to write it over', () => {
    let h = apply(startHistory(marked('identification')), MAKE);
    const first = h.project.labels[0];
    if (!first) throw new Error('no label');
    h = apply(h, { id: 'label.edit', args: { id: first.id, change: { text: 'DO NOT PULL' } } });
    expect(h.project.labels[0]?.made).toBeUndefined();
    expect(refusal(h.project, MAKE)).toContain('1 are written by hand and stay');
    h = apply(h, { id: 'labels.make', args: { rewrite: true } });
    expect(h.project.labels[0]).toEqual(first);
  });

  it('is not made where the method has no word', () => {
    const p = marked('signal', (t) => {
      t.project.signals.splice(0);
      for (const w of t.project.wires) delete w.signal;
      for (const c of t.project.connectors) for (const e of c.cavities) delete e.signal;
    });
    expect(textsOf(apply(startHistory(p), MAKE).project)).toEqual(['X1', 'X2']);
  });
});
