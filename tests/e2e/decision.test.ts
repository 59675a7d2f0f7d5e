import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { startHostedApp, type HostedApp } from './hosted-app';
import { openBrowser, projectIn } from './window';

let folder: string;
let app: HostedApp;
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'latchwork-decision-'));
  // A strip length outside its tolerance.
  const project = tiny((t) => void (t.wire('W1').ends[0].stripLengthMm = 9));
  writeFileSync(join(folder, 'faulty.latchwork'), serialiseProject(project));
  app = await startHostedApp([join(folder, 'faulty.latchwork')]);
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await app?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** A window on the findings of the file, on a day of our choice. */
async function openOn(day: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.clock.setFixedTime(new Date(`${day}T09:00:00`));
  await page.goto(app.address);
  await page.getByRole('application', { name: 'Diagram' }).waitFor();
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: /^Findings/ }).click(); // prettier-ignore
  await page.getByRole('listbox', { name: 'Findings' }).getByRole('option', { name: /strip-length/ }).click(); // prettier-ignore
  return page;
}

const standing = (page: Page): Promise<string> => page.getByRole('region', { name: 'Standing' }).innerText();

test('a permit is recorded, holds to the end of its last day, and then the finding is open again', async () => {
  const page = await openOn('2026-03-01');
  expect(await standing(page)).toContain('open');
  await page.getByRole('button', { name: 'Record a decision' }).click();
  const form = page.getByRole('dialog');
  expect(await form.getByLabel('Actual').inputValue()).toBe('9 mm');
  await form.getByLabel('Reason').fill('First lot is stripped already');
  await form.getByLabel('Requested by').fill('R. Quester');
  await form.getByLabel('Approved by').fill('A. Prover');
  await form.getByLabel('Role').fill('quality');
  await form.getByRole('button', { name: 'Record' }).click();
  expect(await form.getByRole('alert').innerText()).toContain('no open-ended permits');
  await form.getByLabel('Holds until the end of').fill('2026-06-30');
  await form.getByRole('button', { name: 'Record' }).click();
  await form.waitFor({ state: 'detached' });
  expect(await standing(page)).toMatch(/accepted[^]*D-1[^]*until 2026-06-30/);
  await page.keyboard.press('Control+S');
  await page
    .locator('.file-state')
    .filter({ hasText: /^saved/ })
    .waitFor();
  await page.close();
  expect(projectIn(folder, 'faulty.latchwork').decisions).toMatchObject([
    { number: 'D-1', kind: 'deviation-permit', expiresOn: '2026-06-30', approvals: [{ name: 'A. Prover', role: 'quality', date: '2026-03-01' }] },
  ]); // prettier-ignore

  const lastDay = await openOn('2026-06-30');
  expect(await standing(lastDay)).toContain('accepted');
  await lastDay.close();

  const after = await openOn('2026-07-01');
  expect(await standing(after)).toMatch(/expired[^]*D-1 expired with 2026-06-30/);
  await after.getByRole('button', { name: 'Report' }).click();
  await after.getByRole('menuitem', { name: 'PDF' }).click();
  await after.getByRole('textbox', { name: 'File name' }).fill('report');
  await after.keyboard.press('Enter');
  await after.getByText('Exported report.pdf').waitFor();
  const pdf = readFileSync(join(app.folder, 'exports', 'report.pdf'));
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  await after.close();
});
