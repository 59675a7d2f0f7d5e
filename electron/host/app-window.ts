import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';

/** A browser window without address bar, on a profile of its own so that nothing of the user's browsing takes part. */
export function openAppWindow(browser: string, address: string, dataFolder: string): ChildProcess {
  return spawn(browser, appWindowArguments(address, dataFolder, isRoot()), { stdio: 'ignore' });
}

export function appWindowArguments(address: string, dataFolder: string, root: boolean): string[] {
  return [
    `--app=${address}`,
    `--user-data-dir=${join(dataFolder, 'browser-window')}`,
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
