import { type Browser, chromium } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { chromiumFlags, findChromium } from '../../electron/start/chromium.mjs';
import { type HostedApp, startHostedApp } from './hosted-app';

let app: HostedApp;
let browser: Browser;

beforeAll(async () => {
  app = await startHostedApp();
  browser = await chromium.launch({ executablePath: findChromium() ?? undefined, args: chromiumFlags });
});
afterAll(async () => {
  await browser?.close();
  await app?.stop();
});

it('opens under the closed policy without a violation', async () => {
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => void (message.type() === 'error' && complaints.push(message.text())));
  page.on('pageerror', (error) => void complaints.push(error.message));
  await page.goto(app.address);
  await page.locator('#root > *, #root:not(:empty)').first().waitFor();
  expect(complaints).toEqual([]);
});

it('answers a call of the page, and only with the token', async () => {
  const page = await browser.newPage();
  await page.goto(app.address);
  const ask = (token: string) =>
    page.evaluate(async (token) => {
      const response = await fetch('/rpc/app:info', {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'x-latchwork-token': token },
        body: '{}',
      });
      return { status: response.status, body: (await response.json()) as Record<string, unknown> };
    }, token);
  expect(await ask(new URL(app.address).hash.slice('#token='.length))).toMatchObject({
    status: 200,
    body: { host: 'browser', dialogs: 'listed' },
  });
  expect((await ask('x')).status).toBe(401);
});

it('gives a page of another address nothing', async () => {
  const page = await browser.newPage();
  await page.goto('about:blank');
  const reached = await page.evaluate(
    (address) =>
      fetch(new URL('/rpc/app:info', address), { method: 'POST', body: '{}' }).then(
        (response) => response.status,
        () => 'refused',
      ),
    app.address,
  );
  expect(reached).toBe('refused');
});
