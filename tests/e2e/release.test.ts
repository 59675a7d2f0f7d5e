import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startHostedApp, type HostedApp } from './hosted-app';
import { openBrowser, openWindow, projectIn, saveAs } from './window';

let app: HostedApp;
let browser: Browser;

beforeAll(async () => {
  app = await startHostedApp(['--demo=bench-lamp']);
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await app?.stop();
});

/** Pictures for people who look on, where a folder for them is named. */
async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env['PICTURES'];
  if (!folder) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: join(folder, `${name}.png`) });
}

async function fromFileMenu(page: Page, item: string): Promise<void> {
  await page.getByRole('button', { name: 'File', exact: true }).click();
  await page.getByRole('menuitem', { name: item }).click();
}

test('release the small demo, meet the frozen revision, start the next, compare them', async () => {
  const { page, complaints } = await openWindow(browser, app.address);
  // The demo is there before anything is saved.
  await page.getByText('Bench lamp harness').first().waitFor();
  await saveAs(page, 'lamp');

  await fromFileMenu(page, 'Release this revision');
  const dialog = page.getByRole('dialog', { name: 'Release revision A' });
  await dialog.getByText('No critical finding is open.').waitFor();
  await dialog.getByLabel('Approved by').fill('A. Prover');
  await picture(page, 'release');
  await dialog.getByRole('button', { name: 'Release and make the package' }).click();
  const again = page.getByRole('dialog', { name: 'Package of revision A' });
  await again.getByText(/\d+ files in/).waitFor({ timeout: 60_000 });
  await picture(page, 'released');
  await again.getByRole('button', { name: 'Close' }).click();

  const project = projectIn(app.folder, 'lamp.latchwork');
  const baseline = project.revisions.at(-1)?.baseline;
  expect(project.revisions.at(-1)).toMatchObject({ revision: 'A', status: 'released' });
  expect(project.titleBlock.approvalPerson).toBe('A. Prover');
  const releases = join(app.folder, 'releases');
  expect(readdirSync(releases).sort()).toEqual(['EX-0001-A', 'EX-0001-A.zip']);
  const file = readFileSync(join(releases, 'EX-0001-A', 'EX-0001-A.latchwork'));
  expect(createHash('sha256').update(file).digest('hex')).toBe(baseline);

  // Frozen: a wire is not taken away.
  await page.getByRole('button', { name: 'Connection table' }).click();
  const wire = page
    .getByRole('grid', { name: 'Connection table' })
    .locator('[role="gridcell"][aria-colindex="1"][title="W1"]');
  await wire.click();
  await page.keyboard.press('Delete');
  await page.getByText('Revision A is released and frozen. Add a revision to go on from it.').waitFor();
  expect(await wire.count()).toBe(1);

  await page.keyboard.press('Escape');
  await page.getByRole('application', { name: 'Diagram' }).focus();
  await page.keyboard.press('Escape');
  const inspector = page.getByRole('region', { name: 'Inspector' });
  await inspector.getByText(/^Revisions \(1\)/).click();
  await inspector.getByRole('button', { name: 'Start the next revision' }).click();
  await inspector.getByLabel('Revision B: what has changed').fill('Without the first wire');
  await page.keyboard.press('Enter');
  await inspector.getByText(/^Revisions \(2\)/).waitFor();
  await wire.click();
  await page.keyboard.press('Delete');
  await expect.poll(() => wire.count()).toBe(0);
  await saveAs(page, 'lamp-b');

  await fromFileMenu(page, 'Compare with another state');
  await page.getByRole('dialog').getByRole('button', { name: 'A file …' }).click();
  await page.getByRole('option', { name: /^lamp\.latchwork/ }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Open' }).click();
  await page.getByRole('heading', { name: /^Changes since lamp\.latchwork/ }).waitFor();
  const changes = page.getByRole('grid', { name: 'Change report' });
  await changes.getByRole('gridcell', { name: 'wire W1', exact: true }).first().waitFor();
  await picture(page, 'compared');
  await page.keyboard.press('Alt+2');
  await page.getByRole('application', { name: 'Formboard' }).waitFor();
  await picture(page, 'compared-board');
  await page.getByRole('button', { name: 'Change note (PDF)' }).click();
  await page.getByRole('textbox', { name: 'File name' }).fill('note');
  await page.keyboard.press('Enter');
  await page.getByText('Exported note.pdf').waitFor();
  expect(
    readFileSync(join(app.folder, 'exports', 'note.pdf'))
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');
  await page.getByRole('button', { name: 'End the comparison' }).click();
  await expect.poll(() => changes.count()).toBe(0);
  expect(complaints).toEqual([]);
}, 180_000);
