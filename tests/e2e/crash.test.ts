import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startHostedApp, type HostedApp } from './hosted-app';
import { openBrowser, projectIn, saveAs } from './window';

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

async function setTitle(page: Page, title: string): Promise<void> {
  const field = page.getByLabel('Title', { exact: true });
  await field.fill(title);
  await field.press('Enter');
}

test(
  'the host is killed in the middle of an edit: the file is whole, and the work is offered at the next start',
  { timeout: 120_000 },
  async () => {
    const first = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await first.goto(app.address);
    await first.getByText('Bench lamp').first().waitFor();
    await saveAs(first, 'lamp');
    const saved = readFileSync(join(app.folder, 'lamp.latchwork'), 'utf8');

    await setTitle(first, 'Edited and not saved');
    await first.locator('.file-state').filter({ hasText: 'changes not saved' }).waitFor();
    // One interval of the backup and a little.
    await first.waitForTimeout(6_000);
    await app.kill();
    expect(readFileSync(join(app.folder, 'lamp.latchwork'), 'utf8')).toBe(saved);

    // The window is still there: it says that saving failed and keeps the work.
    await first.keyboard.press('Control+S');
    await first
      .getByRole('log')
      .getByText(/host did not answer/)
      .waitFor();
    await first.locator('.file-state').filter({ hasText: 'changes not saved' }).waitFor();

    app = await app.restart();
    const second = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await second.goto(app.address);
    const offer = second.getByRole('dialog');
    await offer.getByText('Work from last time was not saved').waitFor();
    expect(await offer.innerText()).toContain('lamp.latchwork');
    await offer.getByRole('button', { name: 'Go on with it' }).click();
    await second.getByRole('application', { name: 'Diagram' }).waitFor();
    await second.locator('.file-state').filter({ hasText: 'changes not saved' }).waitFor();
    await second.keyboard.press('Control+S');
    await second
      .locator('.file-state')
      .filter({ hasText: /^saved/ })
      .waitFor();
    expect(projectIn(app.folder, 'lamp.latchwork').titleBlock.title).toBe('Edited and not saved');

    // Nothing is offered twice.
    const third = await browser.newPage();
    await third.goto(app.address);
    await third.getByRole('application', { name: 'Diagram' }).waitFor();
    expect(await third.getByRole('dialog').count()).toBe(0);
  },
);
