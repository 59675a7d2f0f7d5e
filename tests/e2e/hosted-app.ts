import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBuilt, root } from '../../electron/start/build.mjs';

export interface HostedApp {
  /** Where a browser opens the window, token included. */
  readonly address: string;
  /** The working folder that the window lists and saves in; exports go to `exports` in it. */
  readonly folder: string;
  /** Ends it in the middle of whatever it does, as a crash would; its folders stay for another start. */
  kill(): Promise<void>;
  /** The same folders with a new process. */
  restart(words?: readonly string[]): Promise<HostedApp>;
  stop(): Promise<void>;
}

/** The real browser host on folders of its own. `words` as in electron/host/arguments.ts, such as `--demo=bench-lamp`. */
export async function startHostedApp(words: readonly string[] = []): Promise<HostedApp> {
  await ensureBuilt();
  return startIn(mkdtempSync(join(tmpdir(), 'latchwork-e2e-')), words);
}

async function startIn(top: string, words: readonly string[]): Promise<HostedApp> {
  const folder = join(top, 'work');
  const host = join(root, '.out', 'electron', 'host.cjs');
  const child = spawn(process.execPath, [host, '--data', join(top, 'data'), '--folder', folder, ...words]);
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const address = await new Promise<string>((resolve, reject) => {
    let text = '';
    const read = (chunk: Buffer) => {
      text += chunk.toString();
      const found = /http:\/\/127\.0\.0\.1:\d+\/#token=\S+/.exec(text);
      if (found) resolve(found[0]);
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
    child.once('exit', () => reject(new Error(`The host ended: ${text}`)));
  });
  return {
    address,
    folder,
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
    restart: (again = []) => startIn(top, again),
    stop: async () => {
      child.kill();
      await ended;
      rmSync(top, { recursive: true, force: true });
    },
  };
}
