import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright';
import { cavityPoint } from '@latchwork/core/derive/symbol';
import { parseProject } from '@latchwork/core/model/parse';
import { isMatingHalf } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { chromiumFlags, findChromium } from '../../electron/start/chromium.mjs';

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: findChromium() ?? undefined, args: chromiumFlags });

/** A window of the size that the look is made for; complaints of the page collect in `complaints`. */
export async function openWindow(
  browser: Browser,
  address: string,
): Promise<{ page: Page; complaints: string[] }> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const complaints: string[] = [];
  page.on('pageerror', (error) => void complaints.push(error.message));
  page.on('console', (message) => void (message.type() === 'error' && complaints.push(message.text())));
  await page.goto(address);
  await page.getByRole('application', { name: 'Diagram' }).waitFor();
  return { page, complaints };
}

/** Mouse on the sheet, in its own words. */
export class Sheet {
  constructor(private readonly page: Page) {}

  private get element() {
    return this.page.locator('[data-camera]');
  }

  /** Pixels of the window for a point of the sheet in mm. */
  async pixel(at: { x: number; y: number }): Promise<{ x: number; y: number }> {
    const box = await this.element.boundingBox();
    const text = await this.element.getAttribute('data-camera');
    const [x, y, pxPerMm] = (text ?? '').split(' ').map(Number) as [number, number, number];
    if (!box || !pxPerMm) throw new Error('The sheet is not on screen');
    return { x: box.x + (at.x - x) * pxPerMm, y: box.y + (at.y - y) * pxPerMm };
  }

  async cavity(project: Project, designator: string, cavity: string): Promise<{ x: number; y: number }> {
    const connector = project.connectors.find((c) => c.designator === designator);
    const part = project.parts.find((p) => p.id === connector?.part);
    if (!connector || !isMatingHalf(part)) throw new Error(`No connector ${designator}`);
    return this.pixel(cavityPoint(connector, part, cavity).at);
  }

  async drag(from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> {
    const { mouse } = this.page;
    await mouse.move(from.x, from.y);
    await mouse.down();
    await mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 5 });
    await mouse.move(to.x, to.y, { steps: 5 });
    await mouse.up();
  }
}

/** Saves under a name that was not used yet, by keyboard and the window's own dialog. */
export async function saveAs(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+Shift+S');
  await page.getByRole('textbox', { name: 'File name' }).fill(name);
  await page.keyboard.press('Enter');
  await page
    .locator(`.file-state[title^="${name}"]`)
    .filter({ hasText: /^saved/ })
    .waitFor();
}

export function projectIn(folder: string, name: string): Project {
  const parsed = parseProject(readFileSync(join(folder, name), 'utf8'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
  return parsed.value;
}
