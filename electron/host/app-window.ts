import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * A browser window without address bar. Its profile is new each time: nothing of the user's browsing takes part,
 * and no running browser takes the window over, so that the process ends when the window is closed.
 */
export function openAppWindow(browser: string, address: string): ChildProcess {
  const profile = mkdtempSync(join(tmpdir(), 'latchwork-window-'));
  const remove = () => rmSync(profile, { recursive: true, force: true, maxRetries: 3 });
  const child = spawn(browser, appWindowArguments(address, profile, isRoot()), { stdio: 'ignore' });
  return child.once('exit', remove).once('error', remove);
}

export function appWindowArguments(address: string, profile: string, root: boolean): string[] {
  return [
    `--app=${address}`,
    `--user-data-dir=${profile}`,
    '--no-first-run',
    '--no-default-browser-check',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--window-size=1440,900',
    // The browser's sandbox refuses to start for root; without this there would be no window at all.
    ...(root ? ['--no-sandbox', '--test-type'] : []),
  ];
}

const isRoot = (): boolean => process.getuid?.() === 0;
