import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemBounds } from '@latchwork/core/exports/drawing/drawing-bounds';
import { drawLabel, type LabelWords } from '@latchwork/core/exports/labels/draw-label';
import { LabelCode } from '@latchwork/core/exports/labels/label-code';

const SIZE = { widthMm: 25, heightMm: 12 };
const words = (text: string, more: Partial<LabelWords> = {}): LabelWords => ({
  designator: 'W12', text, codeText: 'EX-0002/W12/1', aroundMm: undefined, ...more,
}); // prettier-ignore
const texts = (d: ReturnType<typeof drawLabel>): string[] =>
  d.items.flatMap((i) => (i.kind === 'text' ? [i.text] : []));

const anyWords = fc.record({
  designator: fc.constantFrom('W1', 'X11', 'K2', 'W12345'),
  text: fc.array(fc.constantFrom(...'ABWX019 :/-gjÄΩ'), { minLength: 1, maxLength: 60 }).map((c) => c.join('')).filter((t) => t.trim() !== ''),
  aroundMm: fc.option(fc.double({ min: 0.5, max: 20, noNaN: true }), { nil: undefined }),
  codeText: fc.constantFrom('EX-0002/W12/1', 'A', 'Ω/W1/1'),
}); // prettier-ignore

describe('a label', () => {
  it('keeps all that it says within its edges, and says all of it', () => {
    fc.assert(
      fc.property(
        anyWords,
        fc.constantFrom(...LabelCode.options),
        fc.constantFrom(SIZE, { widthMm: 40, heightMm: 20 }, { widthMm: 60, heightMm: 30 }),
        (w, code, size) => {
          const drawn = drawLabel(w, size, code);
          for (const item of drawn.items) {
            const b = itemBounds(item);
            expect(b.minX).toBeGreaterThanOrEqual(0);
            expect(b.minY).toBeGreaterThanOrEqual(-1e-9);
            expect(b.maxX).toBeLessThanOrEqual(size.widthMm + 1e-9);
            expect(b.maxY).toBeLessThanOrEqual(size.heightMm + 1e-9);
          }
          const said = texts(drawn).join(' ').replace(/\s+/g, '');
          for (const part of [w.text]) expect(said).toContain(part.replace(/\s+/g, ''));
          expect(said).toContain(w.designator);
          if (drawn.textMm < 1) expect(drawn.remarks.join()).toContain('text hard to read');
        },
      ),
      { numRuns: 300, seed: 3 },
    );
  });

  it('has the designator larger than the text', () => {
    const heights = drawLabel(words('X1:3 / X22:12'), SIZE, 'qr').items.flatMap((i) =>
      i.kind === 'text' ? [i.heightMm] : [],
    );
    expect(heights[0]).toBeGreaterThan(Math.max(...heights.slice(1)));
  });

  it('says a designator once where the text names it', () => {
    const size = { widthMm: 60, heightMm: 30 };
    const drawn = drawLabel(words('X11 MODEM', { designator: 'X11' }), size, 'none');
    expect(texts(drawn).join(' ')).toBe('X11 MODEM');
    expect(texts(drawLabel(words('W12'), SIZE, 'none'))).toEqual(['W12']);
  });

  it('round a thin wire says its line again all the way round', () => {
    const lines = texts(drawLabel(words('X1:3', { aroundMm: 1.5 }), SIZE, 'none'));
    expect(new Set(lines)).toEqual(new Set(['W12  X1:3']));
    // 10.4 mm of label, half a turn of 1.5 mm wire is 2.36 mm.
    expect(lines).toHaveLength(4);
    expect(texts(drawLabel(words('X1:3', { aroundMm: 9 }), SIZE, 'none'))).toEqual(['W12', 'X1:3']);
  });

  it('tells of a text that had to be set too small', () => {
    const drawn = drawLabel(words('M'.repeat(60)), SIZE, 'none');
    expect(drawn.textMm).toBeLessThan(1);
    expect(drawn.remarks.join()).toContain('too long for the label');
  });
});
