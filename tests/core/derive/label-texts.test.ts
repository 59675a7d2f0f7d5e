import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { textByMethod, type EndPlace } from '@latchwork/core/derive/label-plan';
import { cableEnds, type LabelMethod } from '@latchwork/core/derive/label-texts';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';

/** Templates after IEC 62491: {W}, {X}:{pin}, the other end, {X}:{pin} / {X2}:{pin2}, {signal}. */
const METHODS = ['identification', 'local-end', 'remote-end', 'both-ends', 'signal'] as const;

const texts = (edit: (t: TinyDraft) => EndPlace): (string | null)[] => {
  let on: EndPlace | undefined;
  const harness = deriveHarness(tiny((t) => void (on = edit(t))));
  return METHODS.map((method: LabelMethod) => {
    const told = textByMethod(harness, on as EndPlace, method);
    return told.ok ? told.value : null;
  });
};
const wireEnd = (t: TinyDraft, end: 0 | 1): EndPlace => ({ at: 'wire-end', wire: t.wire('W1').id, end });

describe('the text of a wire end', () => {
  const signal = (t: TinyDraft, name: string): void => {
    const id = t.newId();
    t.project.signals.push({ id, name });
    t.wire('W1').signal = id;
  };

  it('names wire, own end, other end, both, and signal', () => {
    const at = (end: 0 | 1) => texts((t) => (signal(t, 'SUPPLY'), wireEnd(t, end)));
    expect(at(0)).toEqual(['W1', 'X1:1', 'X2:1', 'X1:1 / X2:1', 'SUPPLY']);
    expect(at(1)).toEqual(['W1', 'X2:1', 'X1:1', 'X2:1 / X1:1', 'SUPPLY']);
  });

  it('is not made up where no signal is named', () => {
    expect(
      texts(
        (t) => (
          delete t.wire('W1').signal,
          t.project.signals.splice(0),
          t.project.connectors.forEach((c) => c.cavities.forEach((e) => delete e.signal)),
          wireEnd(t, 0)
        ),
      )[4],
    ).toBeNull();
  });

  it('names a splice, and a free end by its text or by its wire', () => {
    const free = (text?: string) =>
      texts((t) => {
        const splice = t.newId();
        t.project.splices.push({ id: splice, designator: 'XS1', position: { x: 0, y: 0 } });
        t.wire('W1').ends = [
          { at: 'splice', splice },
          { at: 'free', position: { x: 9, y: 9 }, ...(text ? { text } : {}) },
        ];
        return wireEnd(t, 0);
      }).slice(0, 4);
    expect(free('chassis')).toEqual(['W1', 'XS1', 'chassis', 'XS1 / chassis']);
    expect(free()).toEqual(['W1', 'XS1', 'W1:2', 'XS1 / W1:2']);
  });
});

describe('the text of a connector', () => {
  const connector = (t: TinyDraft): EndPlace => ({ at: 'connector', connector: t.connector('X1').id });

  it('names it, and what it is mated with', () => {
    const mated = texts((t) => {
      t.project.mates = [{ id: t.newId(), a: t.connector('X2').id, b: t.connector('X1').id }];
      return connector(t);
    });
    expect(mated).toEqual(['X1', 'X1', 'X2', 'X1 / X2', 'X1']);
  });

  it('is not made up where it is mated with nothing', () => {
    expect(texts((t) => ((t.project.mates = []), connector(t)))).toEqual(['X1', 'X1', null, 'X1', 'X1']);
  });
});

describe('the text of a cable end', () => {
  /** Both wires of the tiny project as cores of one cable, the second drawn from the far end. */
  const cable = (t: TinyDraft): string => {
    const [id, part] = [t.newId(), t.newId()];
    t.project.cables.push({ id, designator: 'K1', part });
    t.wire('W1').core = { cable: id, name: '1' };
    const w2 = t.wire('W2');
    w2.core = { cable: id, name: '2' };
    w2.ends = [w2.ends[1], w2.ends[0]];
    return id;
  };

  it('names the connectors of its side, whichever way the cores were drawn', () => {
    const at = (end: 0 | 1) => texts((t) => ({ at: 'cable-end', cable: cable(t), end }));
    expect(at(0)).toEqual(['K1', 'X1', 'X2', 'X1 / X2', 'K1']);
    expect(at(1)).toEqual(['K1', 'X2', 'X1', 'X2 / X1', 'K1']);
  });

  it('is not made up for a cable without a core in use', () => {
    const unused = texts((t) => {
      const id = t.newId();
      t.project.cables.push({ id, designator: 'K1', part: t.newId() });
      return { at: 'cable-end', cable: id, end: 0 };
    });
    expect(unused).toEqual(['K1', null, null, null, 'K1']);
  });

  it('is found for every cable that has cores', () => {
    expect(cableEnds(deriveHarness(tiny((t) => void cable(t)))).size).toBe(1);
  });
});
