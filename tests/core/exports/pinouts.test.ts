import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { drawPinout } from '@latchwork/core/exports/pinouts/draw-pinout';
import { pinouts } from '@latchwork/core/exports/pinouts';
import { Paper } from '@latchwork/core/exports/paper/paper';
import type { DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import { baselineOf } from '@latchwork/core/model/baseline';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const inputOf = (change?: (t: TinyDraft) => void) => {
  const harness = deriveHarness(tiny(change));
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
};
const rowsOf = (change?: (t: TinyDraft) => void) => pinouts.table(inputOf(change)).rows;
const rowOf = (place: string, change?: (t: TinyDraft) => void) =>
  rowsOf(change).find((r) => `${r.connector}:${r.cavity}` === place);

describe('pinouts', () => {
  it('tells of a cavity what is in it, where its wire goes and which cavity it meets', () => {
    expect(rowOf('X1:1')).toEqual({
      connector: 'X1',
      part: 'H-SOCKET',
      keying: 'none',
      cavity: '1',
      state: 'wired',
      signal: 'SUP',
      wire: 'W1',
      colour: 'RD',
      size: '22 AWG',
      contact: 'C-SOCKET',
      contactKind: 'socket',
      sealOrPlug: null,
      to: 'X2:1',
      mate: 'X3',
      mateCavity: '1',
      remarks: null,
    });
    expect(rowOf('X1:3')?.state).toBe('empty by intent');
  });

  it('lists the connectors of the harness, and those of the equipment only where a wire ends in them', () => {
    const names = new Set(rowsOf().map((r) => r.connector));
    expect([...names]).toEqual(['X1', 'X2']);
  });

  it('says undeclared where nothing is declared, and what is not known', () => {
    const row = rowOf('X1:3', (t) => void (t.connector('X1').cavities = []));
    expect(row?.state).toBe('undeclared');
    expect(row?.remarks).toBe('state not declared');
    const bare = rowOf('X1:1', (t) => {
      for (const end of t.wire('W1').ends) if (end.at === 'cavity') delete end.contact;
      delete t.wire('W1').colour;
      delete t.wire('W1').signal;
    });
    expect([bare?.contact, bare?.colour, bare?.signal]).toEqual([null, null, null]);
    expect(bare?.remarks).toBe('contact not chosen; colour of W1 not chosen; signal of W1 not named');
  });

  it('says that the cavity of the mate is assumed where the numbering of a half is not stated', () => {
    const row = rowOf('X1:1', (t) => void delete t.part('housing', 'H-SOCKET').cavityOneCorner);
    expect(row?.remarks).toContain('cavity of the mate assumed');
    expect(row?.remarks).toContain('assumed: corner of cavity 1');
  });

  it('writes paper with the baseline, the limit set, the cautions of the bench and one drawing per connector', () => {
    const input = inputOf();
    const paper = Paper.parse(pinouts.paper?.(input));
    expect(paper.baseline).toBe(baselineOf(input.harness.project));
    expect(paper.cautions.join(' ')).toContain('presses and blades');
    expect(paper.blocks.filter((b) => b.kind === 'drawing')).toHaveLength(2);
    expect(JSON.stringify(paper.blocks)).toContain('Limit set');
  });
});

describe('drawn faces', () => {
  const drawn = (change?: (t: TinyDraft) => void) => {
    const use = inputOf(change).harness.connectors.find((c) => c.resolved.connector.designator === 'X1');
    if (!use?.resolved.part) throw new Error('no X1');
    return drawPinout(use, use.resolved.part);
  };
  const texts = (items: readonly DrawingItem[]) => items.flatMap((i) => (i.kind === 'text' ? [i] : []));
  const numbers = (items: readonly DrawingItem[]) => texts(items).filter((t) => /^\d+$/.test(t.text));

  it('stand side by side at true size, named, each number once, the right one the mirror image of the left', () => {
    const { drawing } = drawn();
    expect(texts(drawing.items).map((t) => t.text)).toEqual(
      expect.arrayContaining(['view: mating face', 'view: wire-entry face']),
    );
    const pitchMm = 3;
    const [left, right] = [0.25, 0.75].map((share) => drawing.widthMm * share) as [number, number];
    const found = numbers(drawing.items);
    expect(found.map((t) => t.text)).toEqual(['1', '2', '3', '1', '2', '3']);
    const from = (i: number, middle: number) => (found[i]?.at.x ?? NaN) - middle;
    for (const i of [0, 1, 2]) expect(from(i, left)).toBeCloseTo(-from(i + 3, right), 9);
    expect(Math.abs((found[1]?.at.x ?? NaN) - (found[0]?.at.x ?? NaN))).toBeCloseTo(pitchMm, 9);
  });

  it('mark cavity 1 with a filled corner in each view', () => {
    const corners = drawn().drawing.items.filter(
      (i) => i.kind === 'polyline' && i.fill === 'ink' && i.points.length === 3,
    );
    expect(corners).toHaveLength(2);
  });

  it('say that they are not to scale without a pitch', () => {
    expect(drawn((t) => void delete t.part('housing', 'H-SOCKET').pitchMm).caption).toContain('not to scale');
  });
});
