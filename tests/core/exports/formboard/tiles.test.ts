import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type Box, boxesMeet } from '@latchwork/core/base/point';
import { itemBounds } from '@latchwork/core/exports/drawing/drawing-bounds';
import { placeTiles } from '@latchwork/core/exports/formboard/place-tiles';
import type { Drawing } from '@latchwork/core/exports/drawing/drawing';
import { sheetFor, sizeOf, tileSheets, tileWindow } from '@latchwork/core/exports/formboard/tile-sheet';
import { columnName, OVERLAP_MM, tileAt, tilesOf } from '@latchwork/core/exports/formboard/tiles';
import { sheetMm, SheetSize } from '@latchwork/core/exports/paper/sheet';
import { sheetPlan } from '@latchwork/core/exports/paper/sheet-plan';

const mm = (max: number) => fc.double({ min: 1, max, noNaN: true });
const size = (max: number) => fc.record({ widthMm: mm(max), heightMm: mm(max) });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const HAIR = 1e-6;
const tileSheetsOf = (drawing: Drawing, sheetSize: SheetSize) =>
  tileSheets(drawing, sheetFor(drawing, sheetSize));

describe('tiles', () => {
  const cases = fc.record({
    drawing: size(3000),
    window: fc.record({ widthMm: fc.double({ min: 60, max: 1200, noNaN: true }), heightMm: fc.double({ min: 60, max: 1200, noNaN: true }) }),
    spare: fc.record({ left: share, above: share }),
  }); // prettier-ignore

  it('cover the whole drawing, each as large as its window', () => {
    fc.assert(
      fc.property(cases, fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), ({ drawing, window, spare }, s, t) => {
        const { tiles } = tilesOf(drawing, window, OVERLAP_MM, spare);
        for (const { area } of tiles) expect(sizeOf(area)).toEqual({ widthMm: expect.closeTo(window.widthMm, 6), heightMm: expect.closeTo(window.heightMm, 6) });
        const [x, y] = [drawing.widthMm * s, drawing.heightMm * t];
        expect(tiles.some(({ area }) => x >= area.minX - HAIR && x <= area.maxX + HAIR && y >= area.minY - HAIR && y <= area.maxY + HAIR)).toBe(true);
      }),
    );
  }); // prettier-ignore

  it('share the overlap with their neighbours and no more, and have names of their own', () => {
    fc.assert(
      fc.property(cases, ({ drawing, window, spare }) => {
        const tiling = tilesOf(drawing, window, OVERLAP_MM, spare);
        expect(new Set(tiling.tiles.map((t) => t.name)).size).toBe(tiling.columns * tiling.rows);
        for (const t of tiling.tiles) {
          const right = tileAt(tiling, t.column + 1, t.row);
          const below = tileAt(tiling, t.column, t.row + 1);
          if (right) expect(t.area.maxX - right.area.minX).toBeCloseTo(OVERLAP_MM, 6);
          if (below) expect(t.area.maxY - below.area.minY).toBeCloseTo(OVERLAP_MM, 6);
        }
      }),
    );
  });

  it('are as few as can be: one row or column less would not reach', () => {
    fc.assert(
      fc.property(cases, ({ drawing, window }) => {
        const { columns, rows } = tilesOf(drawing, window);
        const reach = (count: number, w: number): number => count * (w - OVERLAP_MM) + OVERLAP_MM;
        if (columns > 1) expect(reach(columns - 1, window.widthMm)).toBeLessThan(drawing.widthMm);
        if (rows > 1) expect(reach(rows - 1, window.heightMm)).toBeLessThan(drawing.heightMm);
      }),
    );
  });

  test.each([
    [0, 'A'],
    [7, 'H'],
    [8, 'J'],
    [23, 'Z'],
    [24, 'AA'],
    [48, 'BA'],
    [24 + 24 * 24, 'AAA'],
  ])('column %i is called %s', (column, name) => {
    expect(columnName(column)).toBe(name);
  });
});

describe('placed tiles', () => {
  const figure = fc.record({ x: mm(900), y: mm(700), w: mm(200), h: mm(60) }).map(({ x, y, w, h }): Box => ({ minX: x, minY: y, maxX: Math.min(1000, x + w), maxY: Math.min(800, y + h) })); // prettier-ignore
  const window = { widthMm: 180, heightMm: 210 };

  it('cover every figure though empty ones are left out', () => {
    fc.assert(
      fc.property(fc.array(figure, { minLength: 1, maxLength: 12 }), share, share, (figures, s, t) => {
        const { tiles } = placeTiles({ widthMm: 1000, heightMm: 800 }, window, figures);
        for (const f of figures) {
          const [x, y] = [f.minX + (f.maxX - f.minX) * s, f.minY + (f.maxY - f.minY) * t];
          expect(tiles.some(({ area }) => x >= area.minX && x <= area.maxX && y >= area.minY && y <= area.maxY)).toBe(true); // prettier-ignore
        }
        for (const { area } of tiles)
          expect(figures.some((f) => f.minX <= area.maxX && f.maxX >= area.minX && f.minY <= area.maxY && f.maxY >= area.minY)).toBe(true); // prettier-ignore
      }),
    );
  });

  it('keep their seams off what lies in the middle', () => {
    // A bar of 20 mm at half height: two rows that were spared evenly would join right on it.
    const bar = { minX: 0, minY: 145, maxX: 170, maxY: 165 };
    const { tiles } = placeTiles({ widthMm: 170, heightMm: 310 }, window, [bar, { minX: 0, minY: 0, maxX: 5, maxY: 5 }, { minX: 0, minY: 305, maxX: 5, maxY: 310 }]); // prettier-ignore
    expect(tiles.some(({ area }) => area.minY <= bar.minY && area.maxY >= bar.maxY)).toBe(true);
  });
});

// ISO 216, and ANSI/ASME Y14.1 for the two others (8.5 x 11 and 11 x 17 inches).
test.each([
  ['A4', 210, 297],
  ['A3', 297, 420],
  ['A2', 420, 594],
  ['A1', 594, 841],
  ['A0', 841, 1189],
  ['Letter', 8.5 * 25.4, 11 * 25.4],
  ['Tabloid', 11 * 25.4, 17 * 25.4],
] as const)('%s is %d by %d mm', (name, width, height) => {
  expect(sheetMm({ size: name, orientation: 'upright' })).toEqual({ widthMm: expect.closeTo(width, 6), heightMm: expect.closeTo(height, 6) }); // prettier-ignore
});

describe.each(SheetSize.options.flatMap((s) => (['upright', 'landscape'] as const).map((o) => [s, o] as const)))('%s %s', (sizeName, orientation) => {
  const plan = sheetPlan({ size: sizeName, orientation });
  const meet = (a: Box, b: Box): boolean => a.minX < b.maxX - HAIR && a.maxX > b.minX + HAIR && a.minY < b.maxY - HAIR && a.maxY > b.minY + HAIR;

  it('has room for each thing of its own inside the frame', () => {
    const boxes = [plan.title, plan.caution, plan.strip, plan.window];
    boxes.forEach((box, i) => {
      expect(box.minX >= plan.frame.minX - HAIR && box.maxX <= plan.frame.maxX + HAIR && box.minY >= plan.frame.minY - HAIR && box.maxY <= plan.frame.maxY + HAIR).toBe(true);
      for (const other of boxes.slice(i + 1)) expect(meet(box, other)).toBe(false);
    });
    expect(sizeOf(plan.title).widthMm).toBe(180);
  });

  it('shows enough of the drawing for a bar of 100 mm in both directions', () => {
    const { widthMm, heightMm } = sizeOf(tileWindow({ size: sizeName, orientation }));
    expect(Math.min(widthMm, heightMm)).toBeGreaterThan(110);
  });
}); // prettier-ignore

describe.each(SheetSize.options)('the marks on sheets of %s', (sizeName) => {
  const items = [{ kind: 'circle', at: { x: 1000, y: 800 }, radiusMm: 799 }] as const;
  // Wide and high boards, so that sheets are laid both ways.
  const sheets = [
    tileSheetsOf({ widthMm: 2000, heightMm: 1600, items: [...items] }, sizeName),
    tileSheetsOf({ widthMm: 400, heightMm: 260, items: [{ kind: 'circle', at: { x: 200, y: 130 }, radiusMm: 120 }] }, sizeName), // prettier-ignore
  ].flat();
  const inside = (a: Box, b: Box): boolean =>
    a.minX >= b.minX && a.maxX <= b.maxX && a.minY >= b.minY && a.maxY <= b.maxY;

  it('stay in the frame, and clear of title block and caution', () => {
    for (const { sheet, layers } of sheets) {
      const { frame, title, caution } = sheetPlan(sheet);
      for (const item of layers[1]!.drawing.items) {
        const box = itemBounds(item);
        expect(inside(box, { minX: frame.minX - 0.3, minY: frame.minY - 0.3, maxX: frame.maxX + 0.3, maxY: frame.maxY + 0.3 })).toBe(true); // prettier-ignore
        for (const other of [title, caution]) expect(boxesMeet({ minX: box.minX + 0.3, minY: box.minY + 0.3, maxX: box.maxX - 0.3, maxY: box.maxY - 0.3 }, other)).toBe(false); // prettier-ignore
      }
    }
  });

  it('set no words on other words', () => {
    for (const { layers } of sheets.slice(0, 12)) {
      const texts = layers[1]!.drawing.items.filter((i) => i.kind === 'text');
      const boxes = texts.map((t) => {
        const b = itemBounds(t);
        return { minX: b.minX + 0.4, minY: b.minY + 0.5, maxX: b.maxX - 0.4, maxY: b.maxY - 0.5 };
      });
      boxes.forEach((a, i) =>
        boxes.slice(i + 1).forEach((b, k) => {
          expect(boxesMeet(a, b), JSON.stringify([texts[i], texts[i + 1 + k]])).toBe(false);
        }),
      );
    }
  });
});
