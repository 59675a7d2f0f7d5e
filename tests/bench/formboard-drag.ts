import { chromium, type CDPSession, type Page } from 'playwright';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { chromiumFlags, findChromium } from '../../electron/start/chromium.mjs';
import { startHostedApp } from '../e2e/hosted-app';
import { generateProject } from '../generate/harness-generator';

/**
 * `npx tsx tests/bench/formboard-drag.ts`: drags a node of a big formboard in the real window with a real mouse, and prints
 * what the page's main thread did per step and how far apart its frames were. Medians; looked at, never asserted.
 */

/** What the bench page offers (`renderer/bench/start-bench.tsx`), as far as it is used here. */
interface BenchPage {
  readonly __bench: {
    readonly ready: Promise<void>;
    loadBoard(text: string): Promise<void>;
    boardNodeScreenPos(designator: string): { readonly x: number; readonly y: number };
  };
}

const WIRES = 2_000;
const STEPS = 60;

/** Time that the main thread worked since the page was opened, ms: all of it, and scripts alone. */
async function worked(session: CDPSession): Promise<{ task: number; script: number }> {
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name: string): number => 1000 * (metrics.find((m) => m.name === name)?.value ?? 0);
  return { task: of('TaskDuration'), script: of('ScriptDuration') };
}

const median = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[list.length >> 1] ?? NaN;
const share = (list: readonly number[], part: number): number =>
  [...list].sort((a, b) => a - b)[Math.floor((list.length - 1) * part)] ?? NaN;

/** One mouse step a frame for `STEPS` frames; answers main-thread time per step and frame intervals. */
async function drag(page: Page, session: CDPSession, from: { x: number; y: number }): Promise<string> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 12, from.y + 8);
  // As text: the runner that starts this file marks named functions in a way that a page does not know.
  await page.evaluate(`{
    const frames = (window.__frames = []);
    let last = performance.now();
    (function tick() {
      const now = performance.now();
      frames.push(now - last);
      last = now;
      requestAnimationFrame(tick);
    })();
  }`);
  const tasks: number[] = [];
  const scripts: number[] = [];
  for (let i = 0; i < STEPS; i++) {
    const before = await worked(session);
    const angle = (i / STEPS) * 2 * Math.PI;
    await page.mouse.move(from.x + 60 * Math.cos(angle), from.y + 60 * Math.sin(angle));
    await page.evaluate('new Promise((done) => requestAnimationFrame(done))');
    const after = await worked(session);
    tasks.push(after.task - before.task);
    scripts.push(after.script - before.script);
  }
  const frames = await page.evaluate(() => (window as unknown as { __frames: number[] }).__frames.slice(1));
  const start = await worked(session);
  await page.mouse.up();
  await page.waitForTimeout(1500);
  const end = await worked(session);
  const ms = (n: number): string => `${n.toFixed(1).padStart(7)} ms`;
  return [
    `  main thread per step, median     ${ms(median(tasks))}`,
    `  main thread per step, 95 %       ${ms(share(tasks, 0.95))}`,
    `  of it scripts, median            ${ms(median(scripts))}`,
    `  frame, median                    ${ms(median(frames))}`,
    `  frame, 95 %                      ${ms(share(frames, 0.95))}`,
    `  letting go, with all findings    ${ms(end.task - start.task)}`,
  ].join('\n');
}

const placeOf = (page: Page, designator: string): Promise<{ x: number; y: number }> =>
  page.evaluate((d) => (window as unknown as BenchPage).__bench.boardNodeScreenPos(d), designator);

const app = await startHostedApp();
const browser = await chromium.launch({ executablePath: findChromium() ?? undefined, args: chromiumFlags });
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(app.address.replace('/#', '/?bench=1#'));
  await page.waitForFunction('window.__bench !== undefined');
  await page.evaluate(() => (window as unknown as BenchPage).__bench.ready);
  const project = generateProject({ wires: WIRES });
  const { nodes, segments } = project;
  process.stdout.write(`Formboard of ${segments.length} segments and ${project.wires.length} wires\n`);
  await page.evaluate(
    (text) => (window as unknown as BenchPage).__bench.loadBoard(text),
    serialiseProject(project),
  );
  await page.waitForTimeout(4000);
  const session = await page.context().newCDPSession(page);
  // Thread time: what the thread worked, not how long it waited for a processor.
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  // The node where most segments meet, and the end of a branch.
  const degree = (id: string): number => segments.filter((s) => s.from === id || s.to === id).length;
  const busiest = [...nodes].sort((a, b) => degree(b.id) - degree(a.id))[0];
  const loneliest = nodes.find((n) => degree(n.id) === 1);
  for (const [node, near] of [
    [busiest, false],
    [loneliest, false],
    [busiest, true],
  ] as const) {
    if (!node) continue;
    let at = await placeOf(page, node.designator);
    if (near) {
      await page.mouse.move(at.x, at.y);
      for (let i = 0; i < 13; i++) await page.mouse.wheel(0, -150);
      await page.waitForTimeout(1500);
      at = await placeOf(page, node.designator);
    }
    const view = near ? 'near, wires drawn as lanes' : 'everything in view';
    process.stdout.write(`Drag ${node.designator}, where ${degree(node.id)} segments meet, ${view}\n`);
    process.stdout.write(`${await drag(page, session, at)}\n`);
  }
} finally {
  await browser.close();
  await app.stop();
}
