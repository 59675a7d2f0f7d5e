import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import { CAPITALS, textWidthMm } from '@latchwork/core/exports/drawing/text-width';
import type { Paper, PaperBlock } from '@latchwork/core/exports/paper/paper';
import { type Fonts, readFonts } from '../../../electron/services/pdf/fonts';
import { modulesOf } from '../../../electron/services/modules-of';
import { Pen } from '../../../electron/services/pdf/pen';
import { paperPdf } from '../../../electron/services/pdf/paper-pdf';
import { SAMPLE } from '../../core/exports/drawing/sample-drawing';
import { boxOf, readPdf, type ReadPage } from './pdf-figures';

vi.setConfig({ testTimeout: 30_000 });

let fonts: Fonts;
beforeAll(async () => {
  fonts = await readFonts('assets/fonts');
});

const paper = (blocks: readonly PaperBlock[], sheet?: Paper['sheet']): Paper => ({
  id: 'sample',
  title: 'Sample',
  titleBlock: { title: 'Sample', identificationNumber: 'H-1', legalOwner: 'Owner', creator: 'Maker' },
  revision: 'A (draft)',
  baseline: 'ab'.repeat(32),
  date: '2026-03-01',
  cautions: ['First caution.', 'Second caution.'],
  blocks: [...blocks],
  ...(sheet ? { sheet } : {}),
});
const pagesOf = async (blocks: readonly PaperBlock[], sheet?: Paper['sheet']): Promise<readonly ReadPage[]> =>
  readPdf(await paperPdf(paper(blocks, sheet), fonts));

const ruler: DrawingItem[] = [
  { kind: 'polyline', points: [{ x: 0, y: 0 }, { x: 100, y: 0 }], line: 'thick' },
  { kind: 'polyline', points: [{ x: 0, y: 0 }, { x: 0, y: 100 }], line: 'hair' },
]; // prettier-ignore
const block = (widthMm: number, heightMm: number, more: object = {}): PaperBlock => ({
  kind: 'drawing',
  drawing: { widthMm, heightMm, items: ruler },
  ...more,
});

/** The lines of the ruler: those that have two points and a length of the drawing. */
const sizes = (page: ReadPage, lineMm: number) =>
  page.paths
    .filter((p) => p.stroked && p.points.length === 2 && Math.abs(p.lineMm - lineMm) < 1e-3)
    .map((p) => boxOf(p.points))
    .map((b) => [b.maxX - b.minX, b.maxY - b.minY]);

describe('a drawing on paper', () => {
  it('has its true size, in lines of 0.5 and 0.13 mm', async () => {
    const [page] = await pagesOf([block(120, 110, { caption: 'View: mating face' })]);
    expect(sizes(page!, 0.5)[0]).toEqual([expect.closeTo(100, 3), expect.closeTo(0, 3)]);
    expect(sizes(page!, 0.13)[0]).toEqual([expect.closeTo(0, 3), expect.closeTo(100, 3)]);
    expect(page!.words).toContain('View: mating face, scale 1:1');
  });

  it('is as large as its scale says, with lines as wide as ever', async () => {
    const [page] = await pagesOf([block(120, 110, { scale: 0.5 })]);
    expect(sizes(page!, 0.5)[0]).toEqual([expect.closeTo(50, 3), expect.closeTo(0, 3)]);
    expect(page!.words).toContain('scale 1:2');
    expect(page!.words).not.toContain('made smaller');
  });

  it('is made smaller by a scale of ISO 5455 where the page is too small, and says so', async () => {
    const [page] = await pagesOf([block(400, 110)]);
    expect(sizes(page!, 0.5)[0]![0]).toBeCloseTo(20, 3);
    expect(page!.words).toContain('scale 1:5, made smaller to fit the page: not 1:1');
  });

  it('is kept whole: what does not fit under the text goes to the next page', async () => {
    const pages = await pagesOf([block(120, 150), block(120, 150)]);
    expect(pages).toHaveLength(2);
    for (const page of pages) {
      const { maxY } = boxOf(page.paths.filter((p) => Math.abs(p.lineMm - 0.13) < 1e-3).flatMap((p) => [...p.points])); // prettier-ignore
      expect(maxY).toBeLessThan(250);
    }
  });

  it('shows text at the height of its capitals, turned and aligned', async () => {
    const [page] = await pagesOf([{ kind: 'drawing', drawing: SAMPLE }], {
      size: 'A3',
      orientation: 'landscape',
    });
    const turned = page!.texts.find((t) => t.text === 'turned')!;
    expect(turned.angleDeg).toBeCloseTo(-90, 3);
    expect(turned.sizeMm * 0.668).toBeCloseTo(2.5, 3);
    const [line] = page!.paths.filter((p) => Math.abs(p.lineMm - 0.5) < 1e-3);
    const origin = { x: line!.points[0]!.x - 10, y: line!.points[0]!.y - 20 };
    // Right-aligned and reading upwards, it ends at its place.
    expect(turned.at.x - origin.x).toBeCloseTo(180, 3);
    expect(turned.at.y - origin.y).toBeCloseTo(80 + turned.widthMm, 2);
  });
});

it('measures text in core as wide as the fonts set it, but for kerning', () => {
  const pen = new Pen(fonts, { title: '', author: '', subject: '', made: new Date(0) });
  const heightMm = 2.5;
  const words = [
    'S1  300 +10/-5  6.9',
    'label "X16 DISPLAY"',
    'AV To WA 11111',
    'view: wire-entry face, 3:1',
    'mmmmWWWW',
  ];
  for (const look of ['text', 'strong', 'code'] as const)
    for (const text of words) {
      const set = pen.width(text, look, heightMm / CAPITALS);
      const measured = textWidthMm(text, heightMm, look);
      expect(measured, `${look} ${text}`).toBeGreaterThan(set * 0.99);
      expect(measured).toBeLessThan(set * 1.06);
    }
});

describe('pages', () => {
  it('end at a page break, and never hold nothing', async () => {
    const text = (words: string): PaperBlock => ({ kind: 'text', text: [{ text: words }] });
    const pages = await pagesOf([
      { kind: 'page-break' },
      text('one'),
      { kind: 'page-break' },
      { kind: 'page-break' },
      text('two'),
      { kind: 'page-break' },
    ]);
    expect(pages.map((p) => [p.words.includes('one'), p.words.includes('two')])).toEqual([
      [true, false],
      [false, true],
    ]);
  });

  it('lie across where a table has many columns', async () => {
    const table = (columns: number): PaperBlock => ({
      kind: 'table',
      columns: Array.from({ length: columns }, (_, i) => ({ title: `c${i}`, share: 1 })),
      rows: [Array.from({ length: columns }, () => 'x')],
    });
    const [few] = await pagesOf([table(8)]);
    const [many] = await pagesOf([table(9)]);
    expect([few!.widthMm, few!.heightMm].map(Math.round)).toEqual([210, 297]);
    expect([many!.widthMm, many!.heightMm].map(Math.round)).toEqual([297, 210]);
  });

  it('hold one picture at its place, confined to its window', async () => {
    const clip = { minX: 30, minY: 20, maxX: 90, maxY: 200 };
    const drawing = { widthMm: 120, heightMm: 110, items: ruler };
    const sheet = { size: 'Letter', orientation: 'upright' } as const;
    const [page] = await pagesOf([{ kind: 'sheet', sheet, layers: [{ drawing, at: { x: 40, y: 50 }, clip }] }]); // prettier-ignore
    expect([page!.widthMm, page!.heightMm]).toEqual([expect.closeTo(215.9, 3), expect.closeTo(279.4, 3)]);
    const line = page!.paths.find((p) => Math.abs(p.lineMm - 0.5) < 1e-3)!;
    expect(line.points[0]).toEqual({ x: expect.closeTo(40, 3), y: expect.closeTo(50, 3) });
    expect(line.clip).toEqual({
      minX: expect.closeTo(30, 3),
      minY: expect.closeTo(20, 3),
      maxX: expect.closeTo(90, 3),
      maxY: expect.closeTo(200, 3),
    });
    expect(page!.words).toContain('ab'.repeat(32));
  });
});

describe('codes', () => {
  // ISO/IEC 15417: start B 211214, stop 2331112, and the values of "A" 111323 and its check (104 + 1 x 33) mod 103 = 34: 131123.
  it('encodes Code 128 as the standard does', () => {
    const code = modulesOf('code-128', 'A')!;
    const widths = [2, 1, 1, 2, 1, 4, 1, 1, 1, 3, 2, 3, 1, 3, 1, 1, 2, 3, 2, 3, 3, 1, 1, 1, 2];
    let x = 10;
    const bars = widths.flatMap((width, i) => {
      x += width;
      return i % 2 === 0 ? [{ x: x - width, width }] : [];
    });
    expect(code.dark.map((d) => ({ x: d.x, width: d.width }))).toEqual(bars);
    expect(code.columns).toBe(x + 10);
  });

  it('refuses what Code 128 cannot say, and what is too long for QR', () => {
    expect(modulesOf('code-128', 'Ω')).toBeNull();
    expect(modulesOf('qr', 'x'.repeat(5000))).toBeNull();
    expect(modulesOf('qr', 'Ω')).not.toBeNull();
  });

  it('has the finder patterns of QR in three corners', () => {
    const { columns, dark } = modulesOf('qr', 'W1')!;
    const first = dark.filter((d) => d.y === 4);
    expect(first[0]).toEqual({ x: 4, y: 4, width: 7, height: 1 });
    expect(first.at(-1)).toEqual({ x: columns - 4 - 7, y: 4, width: 7, height: 1 });
    expect(dark.filter((d) => d.y === columns - 5)[0]).toMatchObject({ x: 4, width: 7 });
  });
});
