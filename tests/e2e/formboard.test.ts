import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { root } from '../../electron/start/build.mjs';
import { startHostedApp, type HostedApp } from './hosted-app';
import { openBrowser, openWindow, projectIn, saveAs, Sheet } from './window';

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

function demo(): Project {
  const text = readFileSync(join(root, 'demo-projects', 'weather-station.latchwork'), 'utf8');
  const parsed = parseProject(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
  return parsed.value;
}

const named = <T extends { readonly designator: string }>(list: readonly T[], designator: string): T => {
  const found = list.find((o) => o.designator === designator);
  if (!found) throw new Error(`no ${designator}`);
  return found;
};

/** A point a third along a straight run, away from what lies in its middle. */
function onRun(project: Project, designator: string): { x: number; y: number } {
  const s = named(project.segments, designator);
  const place = (id: string) => project.nodes.find((n) => n.id === id)!.position;
  const [a, b] = [place(s.from), place(s.to)];
  return { x: a.x + (b.x - a.x) * 0.4, y: a.y + (b.y - a.y) * 0.4 };
}

const lengthShown = (page: Page): Promise<string> =>
  page
    .getByRole('region', { name: 'Inspector' })
    .locator('.field')
    .filter({ hasText: /^Length/ })
    .first()
    .innerText()
    .then((text) => text.replace(/\s+/g, ' '));

test('lay the medium demo out anew by mouse: drag, undo, split, measure, pin a path', async () => {
  const { page, complaints } = await openWindow(browser, app.address);
  await page
    .getByRole('navigation', { name: 'Pages' })
    .getByRole('button', { name: /^Formboard/ })
    .click();
  await page.getByRole('application', { name: 'Formboard' }).waitFor();
  await page.locator('[data-camera]').waitFor();
  const sheet = new Sheet(page);
  const project = demo();
  const click = async (at: { x: number; y: number }): Promise<void> => {
    const p = await sheet.pixel(at);
    await page.mouse.click(p.x, p.y);
  };

  // The end of a branch is dragged away from the trunk: its length follows, and comes back with undo.
  const run = named(project.segments, 'S23');
  const [root23, end] = [run.from, run.to].map((id) => project.nodes.find((n) => n.id === id)!);
  const drawn = Math.hypot(end!.position.x - root23!.position.x, end!.position.y - root23!.position.y);
  const farther = {
    x: end!.position.x,
    y: end!.position.y + Math.sign(end!.position.y - root23!.position.y) * 30,
  };
  await sheet.drag(await sheet.pixel(end!.position), await sheet.pixel(farther));
  await click(onRun(project, 'S23'));
  await expect.poll(() => lengthShown(page)).toBe(`Length ${drawn + 30} mm as drawn`);
  await page.keyboard.press('Control+Z');
  await expect.poll(() => lengthShown(page)).toBe(`Length ${drawn} mm as drawn`);

  // Split by a key; measured from node to node.
  await page.keyboard.press('x');
  await page.keyboard.press('Escape');
  await page.keyboard.press('m');
  await click(root23!.position);
  await click(end!.position);
  await page.keyboard.press('Enter');
  await saveAs(page, 'laid-out');
  const split = projectIn(app.folder, 'laid-out.latchwork');
  expect(split.segments).toHaveLength(project.segments.length + 1);
  expect(split.nodes).toHaveLength(project.nodes.length + 1);
  expect(split.dimensions.at(-1)?.datums).toEqual([
    { at: 'node', node: root23!.id },
    { at: 'node', node: end!.id },
  ]);

  // A wire is picked in the length table, and pinned to the run that it is clicked onto.
  await page.keyboard.press('Control+J');
  const row = page.getByRole('row').filter({ hasText: /^W4/ });
  await row.first().click();
  await page.locator('.sheet-root').focus();
  await page.keyboard.press('t');
  await click(onRun(project, 'S3'));
  await page.keyboard.press('Enter');
  await expect.poll(() => row.first().innerText()).toMatch(/yes/);
  await saveAs(page, 'pinned');
  const pinned = projectIn(app.folder, 'pinned.latchwork');
  expect(named(pinned.wires, 'W4').path).toContain(named(pinned.segments, 'S3').id);
  expect(complaints).toEqual([]);
});
