import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getDocument, OPS, Util } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startHostedApp, type HostedApp } from './hosted-app';
import { openBrowser, openWindow } from './window';

let app: HostedApp;
let browser: Browser;

beforeAll(async () => {
  app = await startHostedApp(['--demo=weather-station']);
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await app?.stop();
});

const MM_PER_PT = 25.4 / 72;

/** Sizes of the pages in whole millimetres, as pdf.js reads them. */
async function pageSizes(bytes: Uint8Array): Promise<string[]> {
  const file = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const sizes: string[] = [];
  for (let i = 1; i <= file.numPages; i++) {
    const { width, height } = (await file.getPage(i)).getViewport({ scale: 1 });
    sizes.push(`${Math.round(width * MM_PER_PT)} x ${Math.round(height * MM_PER_PT)}`);
  }
  await file.destroy();
  return sizes;
}

/** Dots to the inch, across and down, of the picture on the first page: the size at which it would come out of a printer. */
async function dotsPerInch(bytes: Uint8Array): Promise<readonly number[]> {
  const file = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const { fnArray, argsArray } = await (await file.getPage(1)).getOperatorList();
  let matrix = [1, 0, 0, 1, 0, 0];
  const stack: number[][] = [];
  const found: (readonly number[])[] = [];
  fnArray.forEach((fn, i) => {
    if (fn === OPS.save) stack.push(matrix);
    if (fn === OPS.restore) matrix = stack.pop() ?? matrix;
    if (fn === OPS.transform) matrix = Util.transform(matrix, [...argsArray[i]]);
    if (fn !== OPS.paintImageXObject) return;
    const [a, b, c, d] = matrix as [number, number, number, number];
    found.push([argsArray[i][1] / (Math.hypot(a, b) / 72), argsArray[i][2] / (Math.hypot(c, d) / 72)]);
  });
  await file.destroy();
  if (found.length !== 1) throw new Error(`${found.length} pictures`);
  return found[0]!;
}

const openPapers = (page: Page): Promise<void> =>
  page
    .getByRole('navigation', { name: 'Pages' })
    .getByRole('button', { name: /^Shop papers/ })
    .click();

const choose = (page: Page, title: string): Promise<void> =>
  page
    .getByRole('navigation', { name: 'Documents' })
    .getByRole('button', { name: new RegExp(`^${title}`) })
    .click();

/** How many pages the bar tells, once the first of them is drawn. */
async function shownPages(page: Page): Promise<number> {
  await page.locator('.page-sheet[data-drawn]').first().waitFor();
  const text = await page.locator('.page-number').innerText();
  return Number(/of (\d+)/.exec(text)?.[1]);
}

/** Share of the pixels of a page that are dark: what is drawn. */
const inkShare = (page: Page, index: number): Promise<number> =>
  page
    .locator('.page-sheet')
    .nth(index)
    .locator('canvas')
    .evaluate((canvas: HTMLCanvasElement) => {
      const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
      let dark = 0;
      for (let i = 0; i < data.length; i += 4) if (data[i]! < 128 && data[i + 3]! > 128) dark++;
      return dark / (data.length / 4);
    });

test('look at pinouts and formboard as pages, print one, export all documents at once', async () => {
  const { page, complaints } = await openWindow(browser, app.address);
  await page.evaluate(() => {
    window.print = () => void document.body.setAttribute('data-printed', '');
  });
  await openPapers(page);

  // The pages of the preview are those of the file.
  await choose(page, 'Pinouts');
  const pinouts = await shownPages(page);
  expect(await inkShare(page, 0)).toBeGreaterThan(0.005);
  expect(await page.locator('.page-sheet').first().innerText()).toContain('view: mating face');
  await page.getByRole('region', { name: 'Pinouts' }).getByRole('button', { name: 'Export' }).click();
  await page.getByRole('menuitem', { name: 'Pages (PDF)' }).click();
  await page.getByRole('textbox', { name: 'File name' }).fill('pinouts');
  await page.keyboard.press('Enter');
  await page.getByText('Exported pinouts.pdf').waitFor();
  const file = readFileSync(join(app.folder, 'exports', 'pinouts.pdf'));
  const sizes = await pageSizes(file);
  expect(pinouts).toBe(sizes.length);
  expect(pinouts).toBeGreaterThan(5);

  // The board on other sheets, walked through by keyboard.
  await choose(page, 'Formboard');
  const onA4 = await shownPages(page);
  await page.getByLabel('Sheets', { exact: true }).selectOption('A3');
  await expect
    .poll(() =>
      page
        .locator('.page-number')
        .innerText()
        .catch(() => ''),
    )
    .not.toContain(`of ${onA4}`);
  const onA3 = await shownPages(page);
  expect(onA3).toBeLessThan(onA4);
  await page.locator('.pages').focus();
  await page.keyboard.press('End');
  await page.getByRole('figure', { name: `Page ${onA3} of ${onA3}` }).waitFor();
  await page.keyboard.press('1');
  await expect.poll(() => page.locator('.page-zoom').innerText()).toBe('100 %');
  // True size: 96 pixels of CSS to the inch.
  const sheet = page.getByRole('figure', { name: `Page ${onA3} of ${onA3}` });
  await expect
    .poll(async () => Math.round(((await sheet.boundingBox())!.width * 25.4) / 96))
    .toSatisfy((mm: number) => [297, 420].includes(mm));

  // What the printer gets: the same sheets at their sizes. Chromium makes the PDF as it would print.
  await choose(page, 'Pinouts');
  await shownPages(page);
  await page.keyboard.press('Control+P');
  const dialog = page.getByRole('dialog');
  await dialog.getByText(`${pinouts} pages`).waitFor({ timeout: 60_000 });
  await dialog.getByRole('button', { name: 'Print', exact: true }).click();
  await page.locator('body[data-printed]').waitFor();
  const printed = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  expect(await pageSizes(printed)).toEqual(sizes);
  // Neither stretched nor shrunk: pictures of 300 dots to the inch.
  for (const dots of await dotsPerInch(printed)) expect(dots).toBeCloseTo(300, 1);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect.poll(() => page.locator('.print-sheet').count()).toBe(0);

  // All documents, into a folder of their own.
  await page.getByRole('button', { name: 'Export all' }).click();
  await dialog.getByRole('checkbox', { name: /XLSX/ }).check();
  await dialog.getByRole('button', { name: /^Export \d+ files$/ }).click();
  const card = page.locator('.job-card');
  await card.getByRole('heading', { name: 'Exported' }).waitFor({ timeout: 60_000 });
  const told = Number(/(\d+) files in/.exec(await card.innerText())?.[1]);
  const folders = readdirSync(join(app.folder, 'exports')).filter((n) => n.includes('documents'));
  expect(folders).toHaveLength(1);
  const made = readdirSync(join(app.folder, 'exports', folders[0]!));
  expect(made).toHaveLength(told);
  for (const ending of ['.pdf', '.xlsx', '.xml', '.kbl', '.vec'])
    expect(made.filter((n) => n.endsWith(ending)).length, ending).toBeGreaterThan(0);
  const boards = made.find((n) => /formboard.*A3\.pdf$/.test(n));
  expect(await pageSizes(readFileSync(join(app.folder, 'exports', folders[0]!, boards!)))).toHaveLength(onA3);

  // Once more and ended in the middle: nothing of it is left.
  const before = readdirSync(join(app.folder, 'exports')).sort();
  await card.getByRole('button', { name: 'Dismiss' }).click();
  await page.getByRole('button', { name: 'Export all' }).click();
  for (const format of ['XLSX', 'DXF', 'CSV']) await dialog.getByRole('checkbox', { name: format }).check();
  await dialog.getByRole('button', { name: /^Export \d+ files$/ }).click();
  await card.getByText(/^\d+ of \d+: /).waitFor();
  await card.getByRole('button', { name: 'Cancel' }).click();
  await card.getByRole('heading', { name: 'Cancelled' }).waitFor();
  expect(readdirSync(join(app.folder, 'exports')).sort()).toEqual(before);
  expect(complaints).toEqual([]);
});
