import { beforeAll, describe, expect, it, test, vi } from 'vitest';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { findingsReport } from '@latchwork/core/exports/findings-report';
import type { Paper } from '@latchwork/core/exports/paper/paper';
import { baselineOf } from '@latchwork/core/model/baseline';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { permitOn, withDecisions } from '../../core/decisions/sample';
import { type Fonts, readFonts } from '../../../electron/services/pdf/fonts';
import { paperPdf } from '../../../electron/services/pdf/paper-pdf';

// Fonts are cut to the letters used, which takes its time on a loaded machine.
vi.setConfig({ testTimeout: 30_000 });

const DAY = '2026-03-01';
let fonts: Fonts;
beforeAll(async () => {
  fonts = await readFonts('assets/fonts');
});

const project = tiny((t: TinyDraft) => {
  t.wire('W1').ends[0].stripLengthMm = 9;
  t.project.titleBlock.legalOwner = 'Łódź & Söhne';
  t.project.titleBlock.identificationNumber = 'H-77';
});
const paperOf = (p = project): Paper => {
  const harness = deriveHarness(p);
  return findingsReport.paper!({ harness, check: checkHarness(harness, RULES), date: DAY });
};

interface Read {
  readonly pages: readonly string[];
  readonly info: Readonly<Record<string, unknown>>;
  readonly fonts: ReadonlySet<string>;
}

/** What another program reads in the file. */
async function read(bytes: Uint8Array): Promise<Read> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await task.promise;
  const pages: string[] = [];
  const names = new Set<string>();
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    expect(page.view.map(Math.round)).toEqual([0, 0, 595, 842]);
    await page.getOperatorList();
    const { items } = await page.getTextContent();
    pages.push(items.map((i) => ('str' in i ? i.str : '')).join(' '));
    for (const item of items)
      if ('fontName' in item) names.add((page.commonObjs.get(item.fontName) as { name: string }).name);
  }
  const { info } = (await document.getMetadata()) as unknown as { info: Record<string, unknown> };
  await task.destroy();
  return { pages, info, fonts: names };
}

const squeezed = (text: string): string => text.replaceAll(/\s+/g, ' ');

describe('the findings report as PDF', () => {
  it('tells the finding, its values, its rule and the limits, in fonts of its own', async () => {
    const { pages, fonts: names } = await read(await paperPdf(paperOf(), fonts));
    const text = squeezed(pages.join(' '));
    expect(text).toContain('major, fail');
    expect(text).toContain('strip-length');
    expect(text).toMatch(/9 mm/);
    expect(text).toContain('Limits used: General, revision 1');
    expect(text).toContain('bend radius factor');
    expect(names.size).toBeGreaterThanOrEqual(3);
    for (const name of names) expect(name).toMatch(/^[A-Z]{6}\+AtkinsonHyperlegible/);
  });

  it('bears title block, cautions, revision and baseline on every page', async () => {
    const many = tiny((t) => {
      t.wire('W1').ends[0].stripLengthMm = 9;
      for (let i = 0; i < 30; i++)
        t.project.limitSet.limits.push({ id: `own-${i}`, value: i, unit: 'mm', source: 'a long source, told in many words so that it takes two lines', verified: false }); // prettier-ignore
    });
    const { pages } = await read(await paperPdf(paperOf(many), fonts));
    expect(pages.length).toBeGreaterThan(1);
    pages.forEach((page, i) => {
      const text = squeezed(page);
      expect(text).toContain(baselineOf(many));
      expect(text).toContain('Checked against the limits entered. An aid, not an authority');
      expect(text).toContain('A (draft)');
      expect(text).toContain(`${i + 1}/${pages.length}`);
      expect(text.includes('Low voltage is not low hazard')).toBe(i === 0);
      // The head of the table goes on with it.
      expect(text).toContain('Source');
    });
  });

  it('tells every decision, whether it holds, and that the finding of one is gone', async () => {
    const found = checkHarness(deriveHarness(project), RULES).findings[0]!;
    const decided = withDecisions(
      project,
      permitOn(project, found, { expiresOn: '2026-02-10' }),
      permitOn(project, found, {
        id: '00000000-0000-4000-8000-0000000d0002',
        number: 'D-2',
        kind: 'concession',
        quantity: 5,
        uses: [{ date: '2026-02-20', quantity: 2, items: 'serial 1 and 2', recordedBy: 'B. Uilder' }],
      }),
      permitOn(project, { ...found, key: 'gone' }, { id: '00000000-0000-4000-8000-0000000d0003', number: 'D-3' }), // prettier-ignore
    );
    const { pages } = await read(await paperPdf(paperOf(decided), fonts));
    const text = squeezed(pages.join(' '));
    expect(text).toMatch(/1 major, fail.* accepted/);
    expect(text).toMatch(/D-1 deviation permit of 2026-02-01 +expired/);
    expect(text).toMatch(/D-2 concession of 2026-02-01 +holds/);
    expect(text).toContain('2 on 2026-02-20, serial 1 and 2, recorded by B. Uilder');
    expect(text).toMatch(/D-3 deviation permit of 2026-02-01 +finding is gone/);
  });

  it('shows letters of other languages', async () => {
    const { pages } = await read(await paperPdf(paperOf(), fonts));
    expect(squeezed(pages[0]!).replaceAll(' ', '')).toContain('Łódź&Söhne');
  });

  it('gives the same bytes for the same project and day, and bears that day', async () => {
    const first = await paperPdf(paperOf(), fonts);
    expect(Buffer.compare(first, await paperPdf(paperOf(), fonts))).toBe(0);
    const { info } = await read(first);
    expect(info).toMatchObject({ CreationDate: 'D:20260301000000Z', Title: 'Findings report: Tiny example' });
  });

  it('says so when nothing was found', async () => {
    const { pages } = await read(await paperPdf(paperOf(tiny()), fonts));
    expect(squeezed(pages[0]!)).toContain('No finding. What was asked stands above.');
  });
});

test('what is too long for its field in the title block is made smaller, and cut where that is not enough', async () => {
  const long = paperOf(tiny((t) => void (t.project.titleBlock.title = 'Harness '.repeat(60))));
  const { pages } = await read(await paperPdf(long, fonts));
  expect(pages[0]).toContain('…');
});
