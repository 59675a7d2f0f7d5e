import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it, test, vi } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { itemBounds } from '@latchwork/core/exports/drawing/drawing-bounds';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { boardFigures, framed } from '@latchwork/core/exports/formboard/board-figures';
import { formboard } from '@latchwork/core/exports/formboard';
import { sheetFor, tileWindow } from '@latchwork/core/exports/formboard/tile-sheet';
import { type SheetSize, SheetSize as SHEET_SIZES } from '@latchwork/core/exports/paper/sheet';
import { baselineOf } from '@latchwork/core/model/baseline';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { type Fonts, readFonts } from '../../../electron/services/pdf/fonts';
import { paperPdf } from '../../../electron/services/pdf/paper-pdf';
import { boxOf, type P, readPdf, type ReadPage, type ReadPath } from './pdf-figures';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

let fonts: Fonts;
let demo: Project;
beforeAll(async () => {
  fonts = await readFonts('assets/fonts');
  const parsed = parseProject(readFileSync('demo-projects/weather-station.latchwork', 'utf8'));
  if (!parsed.ok) throw new Error('the demo does not open');
  demo = parsed.value;
});

const inputOf = (project: Project, sheetSize: SheetSize): DocumentInput => {
  const harness = deriveHarness(project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01', options: { sheetSize } };
};
/** The sheets of the board: those that say where they lie. */
const sheetsOf = async (project: Project, size: SheetSize): Promise<readonly ReadPage[]> =>
  (await readPdf(await paperPdf(formboard.paper!(inputOf(project, size)), fonts))).filter((p) =>
    /sheet \d+ of \d+/.test(p.words),
  );

/** Sheets are named in letters of 7 mm. */
const nameOf = (page: ReadPage): string => page.texts.find((t) => t.sizeMm * 0.668 > 6)!.text;

const isRun = (p: ReadPath): boolean => p.stroked && p.points.length === 2;
const across = (p: ReadPath): number => {
  const { minX, maxX, minY, maxY } = boxOf(p.points);
  return maxY - minY < 1e-3 ? maxX - minX : 0;
};
const down = (p: ReadPath): number => {
  const { minX, maxX, minY, maxY } = boxOf(p.points);
  return maxX - minX < 1e-3 ? maxY - minY : 0;
};
const middle = (p: ReadPath): P => {
  const b = boxOf(p.points);
  return { x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2 };
};
const isIn = (p: P, b: ReadPath['clip']): boolean =>
  b === null || (p.x > b.minX && p.x < b.maxX && p.y > b.minY && p.y < b.maxY);

/** Pegs are crosses of 5.2 mm that the page shows; the crosses that sheets are joined by are 6 mm. */
const crosses = (page: ReadPage, mm: number): readonly P[] =>
  page.paths.filter((p) => isRun(p) && Math.abs(across(p) - mm) < 1e-3 && isIn(middle(p), p.clip)).map(middle); // prettier-ignore

/** Bars of 100 mm outside the part that shows the drawing. */
const bars = (page: ReadPage, length: (p: ReadPath) => number): readonly number[] =>
  page.paths
    .filter((p) => isRun(p) && p.clip === null && Math.abs(p.lineMm - 0.5) < 1e-3)
    .map(length)
    .filter((mm) => mm > 90 && mm < 110);

describe.each(['A4', 'A3'] as const)('the formboard of the medium demo on %s', (size) => {
  let sheets: readonly ReadPage[];
  beforeAll(async () => {
    sheets = await sheetsOf(demo, size);
  });

  it('has a bar of exactly 100 mm in both directions on every sheet', () => {
    expect(sheets.length).toBeGreaterThan(3);
    for (const page of sheets) {
      expect(bars(page, across)).toEqual([expect.closeTo(100, 3)]);
      expect(bars(page, down)).toEqual([expect.closeTo(100, 3)]);
    }
  });

  it('names every sheet, and bears map, title block, revision, baseline and cautions on it', () => {
    const names = sheets.map(nameOf);
    expect(new Set(names).size).toBe(names.length);
    sheets.forEach((page, i) => {
      expect(page.words).toContain(`sheet ${i + 1} of ${sheets.length}`);
      for (const name of names) expect(page.texts.map((t) => t.text)).toContain(name);
      expect(page.words).toContain(baselineOf(demo));
      expect(page.words).toContain(demo.titleBlock.identificationNumber);
      expect(page.words).toContain('A (draft)');
      expect(page.words).toContain('An aid, not an authority');
      expect(page.words).toContain('Check both 100 mm bars with a ruler before use');
    });
  });

  it('shows every node at its place, to 0.1 mm, when the sheets are joined by their crosses', () => {
    const place = joined(sheets);
    const found = sheets.flatMap(
      (page) =>
      crosses(page, 5.2).map((p) => ({ x: p.x + place.get(nameOf(page))!.x, y: p.y + place.get(nameOf(page))!.y })), // prettier-ignore
    );
    // Once the first node is known, all others must lie where the project has them from there.
    const nodes = demo.nodes.map((n) => n.position);
    const leftmost = (points: readonly P[]): P =>
      points.reduce((a, b) => (b.x < a.x - 0.05 || (Math.abs(b.x - a.x) < 0.05 && b.y < a.y) ? b : a));
    const [from, to] = [leftmost(nodes), leftmost(found)];
    for (const n of nodes) {
      const expected = { x: n.x - from.x + to.x, y: n.y - from.y + to.y };
      const nearest = Math.min(...found.map((f) => Math.hypot(f.x - expected.x, f.y - expected.y)));
      expect(nearest).toBeLessThan(0.1);
    }
    for (const f of found) {
      const nearest = Math.min(...nodes.map((n) => Math.hypot(n.x - from.x + to.x - f.x, n.y - from.y + to.y - f.y))); // prettier-ignore
      expect(nearest).toBeLessThan(0.1);
    }
  });

  it('shows every figure of the drawing whole between its sheets', () => {
    const { drawing } = framed(boardFigures(deriveHarness(demo)).items);
    const { tiling } = sheetFor(drawing, size);
    expect(tiling.tiles.map((t) => t.name)).toEqual(sheets.map(nameOf));
    for (const item of drawing.items) {
      const b = itemBounds(item);
      for (const [s, t] of [[0, 0], [1, 0], [0, 1], [1, 1], [0.5, 0.5]] as const) {
        const [x, y] = [b.minX + (b.maxX - b.minX) * s, b.minY + (b.maxY - b.minY) * t];
        expect(tiling.tiles.some(({ area }) => x >= area.minX && x <= area.maxX && y >= area.minY && y <= area.maxY)).toBe(true);
      }
    }
  }); // prettier-ignore
});

/** Where each sheet lies when every cross on an edge is put on the one of its neighbour. */
function joined(sheets: readonly ReadPage[]): ReadonlyMap<string, P> {
  const byName = new Map(sheets.map((s) => [nameOf(s), s]));
  const place = new Map<string, P>([[nameOf(sheets[0]!), { x: 0, y: 0 }]]);
  const open = [nameOf(sheets[0]!)];
  for (let name = open.shift(); name; name = open.shift()) {
    const here = byName.get(name)!;
    const at = place.get(name)!;
    for (const [dx, dy] of [[1, 0], [-1, 0], [0, 1], [0, -1]] as const) {
      const next = String.fromCharCode(name.charCodeAt(0) + dx) + (Number(name.slice(1)) + dy);
      const there = byName.get(next);
      if (!there || place.has(next)) continue;
      const [a, b] = [edge(here, dx, dy), edge(there, -dx as 0, -dy as 0)];
      expect(a).toHaveLength(2);
      expect(b).toHaveLength(2);
      const shift = { x: at.x + a[0]!.x - b[0]!.x, y: at.y + a[0]!.y - b[0]!.y };
      // The other cross of the edge meets too.
      expect(at.x + a[1]!.x - b[1]!.x).toBeCloseTo(shift.x, 3);
      expect(at.y + a[1]!.y - b[1]!.y).toBeCloseTo(shift.y, 3);
      place.set(next, shift);
      open.push(next);
    }
  }
  expect(place.size).toBe(sheets.length);
  return place;
} // prettier-ignore

/** The two crosses on one edge of a sheet. */
function edge(page: ReadPage, dx: number, dy: number): readonly P[] {
  const window = page.paths.find((p) => p.clip !== null)!.clip!;
  return crosses(page, 6)
    .filter((p) => {
      if (dx !== 0) return Math.abs(p.x - (dx > 0 ? window.maxX - 5 : window.minX + 5)) < 0.01;
      return Math.abs(p.y - (dy > 0 ? window.maxY - 5 : window.minY + 5)) < 0.01;
    })
    .filter((p) => (dx !== 0 ? p.y > window.minY + 6 && p.y < window.maxY - 6 : p.x > window.minX + 6 && p.x < window.maxX - 6))
    .sort((a, b) => a.x - b.x || a.y - b.y);
} // prettier-ignore

test.each(SHEET_SIZES.options)(
  'on %s the window of every sheet is what the drawing is cut by',
  async (size) => {
    const sheets = await sheetsOf(tiny(), size);
    const { drawing } = framed(boardFigures(deriveHarness(tiny())).items);
    const { sheet, tiling } = sheetFor(drawing, size);
    expect(sheets).toHaveLength(tiling.tiles.length);
    const window = tileWindow(sheet);
    for (const page of sheets) {
      expect(bars(page, across)).toEqual([expect.closeTo(100, 3)]);
      expect(bars(page, down)).toEqual([expect.closeTo(100, 3)]);
      const { clip } = page.paths.find((p) => p.clip !== null)!;
      expect(clip!.minX).toBeCloseTo(window.minX, 3);
      expect(clip!.maxY).toBeCloseTo(window.maxY, 3);
      expect(page.words).toContain(` ${size} `);
    }
  },
);
