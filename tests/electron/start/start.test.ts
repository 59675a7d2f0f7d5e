import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { ensureBuilt, root } from '../../../electron/start/build.mjs';
import { tempFolder } from '../temp-folder';

const script = (name: string) => fileURLToPath(new URL(`../../../electron/start/${name}`, import.meta.url));

beforeAll(async () => {
  await ensureBuilt();
}, 60_000);

describe('npm start', () => {
  it('serves where there is no screen, and says why and where', async () => {
    const folder = tempFolder();
    const env = { ...process.env, CI: '', DISPLAY: '', WAYLAND_DISPLAY: '' };
    const child = spawn(process.execPath, [script('start.mjs'), '--data', folder, '--folder', folder], {
      env,
    });
    onTestFinished(() => void child.kill());
    const said = await new Promise<string>((resolve) => {
      let text = '';
      child.stdout.on('data', (chunk: Buffer) => {
        text += chunk.toString();
        if (text.includes('http://')) resolve(text);
      });
      child.once('exit', () => resolve(text));
    });
    if (process.platform === 'linux') expect(said).toContain('there is no screen');
    const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(said)?.[0];
    expect(address).toBeDefined();
    const page = await fetch(address!);
    expect(await page.text()).toContain('<div id="root">');

    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGTERM');
    await ended;
    await expect(fetch(address!)).rejects.toThrow();
  }, 60_000);

  it.runIf(process.platform !== 'win32')(
    'starts the Electron that is there, on this program',
    () => {
      const folder = tempFolder();
      writeFileSync(join(folder, 'electron'), '#!/bin/sh\necho "started with: $*"\n');
      chmodSync(join(folder, 'electron'), 0o755);
      const env = { ...process.env, ELECTRON_OVERRIDE_DIST_PATH: folder };
      const { stdout } = spawnSync(process.execPath, [script('start.mjs'), '--electron', 'x.latchwork'], {
        env,
        encoding: 'utf8',
      });
      expect(stdout).toContain('Opening in Electron');
      expect(stdout).toContain(`started with: ${root} x.latchwork`);
    },
    60_000,
  );
});

describe('the browser host with a window', () => {
  it.runIf(process.platform !== 'win32')(
    'ends when its window is closed',
    () => {
      const folder = tempFolder();
      const browser = join(folder, 'browser');
      writeFileSync(browser, '#!/bin/sh\necho "$@" > "$0.arguments"\n');
      chmodSync(browser, 0o755);
      const { status, stdout } = spawnSync(
        process.execPath,
        [script('start.mjs'), '--browser', '--data', folder],
        {
          env: { ...process.env, CHROMIUM_PATH: browser },
          encoding: 'utf8',
          timeout: 30_000,
        },
      );
      expect(status).toBe(0);
      const words = readFileSync(`${browser}.arguments`, 'utf8').trim().split(' ');
      const [, host, token] = /(http:\S+#)token=(\S+)/.exec(stdout) ?? [];
      expect(words.find((word) => word.startsWith('--app='))).toMatch(`--app=${host}ticket=`);
      // Everyone on the machine can read these words.
      expect(words.join(' ')).not.toContain(token);
      const profile = words
        .find((word) => word.startsWith('--user-data-dir='))!
        .slice('--user-data-dir='.length);
      expect(existsSync(profile)).toBe(false);
    },
    60_000,
  );
});

describe('npm run latchwork', () => {
  const line = (...argv: string[]) =>
    spawnSync(process.execPath, [script('latchwork.mjs'), ...argv], { encoding: 'utf8' });

  it('passes words and exit codes through', () => {
    expect(line('--version')).toMatchObject({ status: 0, stdout: '0.1.0\n' });
    expect(line('nothing')).toMatchObject({ status: 2, stdout: '' });
  });
});
