import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Project } from '@latchwork/core/model/project';
import { startHostedApp, type HostedApp } from './hosted-app';
import { openBrowser, openWindow, projectIn, saveAs, Sheet } from './window';

let app: HostedApp;
let browser: Browser;

beforeAll(async () => {
  app = await startHostedApp();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await app?.stop();
});

const contactOf = (p: Project, wire: number, end: 0 | 1): string | undefined => {
  const e = p.wires[wire]?.ends[end];
  const contact = e?.at === 'cavity' ? p.contacts.find((c) => c.id === e.contact) : undefined;
  return p.parts.find((part) => part.id === contact?.part)?.partNumber;
};

async function dropPart(page: Page, number: string, at: { x: number; y: number }): Promise<void> {
  await page
    .getByRole('searchbox', { name: /part/i })
    .or(page.getByPlaceholder(/part number/i))
    .first()
    .fill(number);
  const sheet = page.locator('[data-camera]');
  const box = (await sheet.boundingBox())!;
  const line = page.getByText(number, { exact: true }).first();
  await line.dragTo(sheet, { targetPosition: { x: at.x - box.x, y: at.y - box.y } });
}

const openPage = (page: Page, name: string): Promise<void> =>
  page
    .getByRole('navigation', { name: 'Pages' })
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .click();

/** The number beside "Findings" in the strip: faults, without the points that are still open. */
const faults = async (page: Page): Promise<number> => {
  const count = page.locator('.strip-count');
  return (await count.count()) ? Number(await count.innerText()) : 0;
};

test('draw a small harness by mouse, break it, mend it, undo it, save it, open it again', async () => {
  const { page, complaints } = await openWindow(browser, app.address);
  const sheet = new Sheet(page);

  // Two housings from the shelf, one at each side of the sheet.
  const box = (await page.locator('[data-camera]').boundingBox())!;
  await dropPart(page, 'AL3-03-FS-A', { x: box.x + box.width * 0.25, y: box.y + box.height * 0.3 });
  await dropPart(page, 'AL3-03-FP-A', { x: box.x + box.width * 0.7, y: box.y + box.height * 0.3 });
  await page.keyboard.press('Escape');
  await saveAs(page, 'two-housings');
  const placed = projectIn(app.folder, 'two-housings.latchwork');
  expect(placed.connectors.map((c) => c.designator)).toEqual(['X1', 'X2']);

  // Three wires, cavity to cavity. With the first one X2 turns round, so that its wires leave towards X1.
  const wire = async (p: Project, cavity: string): Promise<void> =>
    sheet.drag(await sheet.cavity(p, 'X1', cavity), await sheet.cavity(p, 'X2', cavity));
  await wire(placed, '1');
  await saveAs(page, 'one-wire');
  const turned = projectIn(app.folder, 'one-wire.latchwork');
  expect(turned.connectors.map((c) => c.exit)).toEqual(['right', 'left']);
  await wire(turned, '2');
  await wire(turned, '3');
  await saveAs(page, 'three-wires');
  const drawn = projectIn(app.folder, 'three-wires.latchwork');
  expect(drawn.wires.map((w) => w.ends.map((e) => (e.at === 'cavity' ? e.cavity : '?')))).toEqual([
    ['1', '1'],
    ['2', '2'],
    ['3', '3'],
  ]);
  for (const i of [0, 1, 2]) {
    expect(contactOf(drawn, i, 0)).toMatch(/^AL3-S/);
    expect(contactOf(drawn, i, 1)).toMatch(/^AL3-P/);
  }
  expect(await faults(page)).toBe(0);

  // A pin in the housing for sockets.
  await page.keyboard.press('Escape');
  const first = await sheet.cavity(drawn, 'X1', '1');
  await page.mouse.click(first.x, first.y);
  await page.getByRole('button', { name: /^Contact: AL3-S/ }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('searchbox', { name: 'Search parts' }).fill('AL3-P2024-01');
  await dialog.getByText('AL3-P2024-01', { exact: true }).click();
  await dialog.getByRole('button', { name: 'Choose' }).click();
  await expect.poll(() => faults(page)).toBeGreaterThan(0);

  // On the canvas: a badge beside the cavity, which tells what is wrong.
  const tip = page.getByRole('tooltip');
  const seen = async (): Promise<string> => {
    for (const dx of [0, -8, 8, -16, 16, -24, 24])
      for (const dy of [0, -8, 8, -16, 16]) {
        await page.mouse.move(first.x + dx, first.y + dy);
        if (await tip.isVisible()) return tip.innerText();
      }
    return '';
  };
  expect(await seen()).toMatch(/pin/i);

  // In the list, with its fix.
  await openPage(page, 'Findings');
  await page.locator('.finding-line').filter({ hasText: 'contact-kind' }).click();
  await page.getByRole('button', { name: /fits/i }).first().click();
  await expect.poll(() => faults(page)).toBe(0);

  // Back to the empty sheet, and forth again.
  await openPage(page, 'Diagram');
  const start = page.getByRole('button', { name: 'Nothing to undo' });
  for (let i = 0; i < 20 && !(await start.isVisible()); i++) await page.keyboard.press('Control+Z');
  await saveAs(page, 'empty-again');
  const empty = projectIn(app.folder, 'empty-again.latchwork');
  expect([empty.connectors, empty.wires, empty.contacts, empty.parts]).toEqual([[], [], [], []]);
  for (let i = 0; i < 20; i++) await page.keyboard.press('Control+Shift+Z');
  await saveAs(page, 'done');

  // Closed, opened again: equal.
  const bytes = readFileSync(join(app.folder, 'done.latchwork'), 'utf8');
  await page.close();
  const again = await openWindow(browser, app.address);
  await again.page.keyboard.press('Control+O');
  await again.page.getByRole('dialog').getByText('done.latchwork').click();
  await again.page.getByRole('button', { name: 'Open', exact: true }).click();
  await again.page.getByRole('treeitem', { name: /^X1/ }).waitFor({ state: 'attached' });
  await saveAs(again.page, 'copy');
  expect(readFileSync(join(app.folder, 'copy.latchwork'), 'utf8')).toBe(bytes);
  expect(projectIn(app.folder, 'done.latchwork').wires).toHaveLength(3);
  expect([...complaints, ...again.complaints]).toEqual([]);
});
