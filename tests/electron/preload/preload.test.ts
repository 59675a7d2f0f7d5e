import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { channels } from '@latchwork/core/bridge/channels';
import { beforeAll, expect, it, vi } from 'vitest';

const exposed = new Map<string, Record<string, (...args: unknown[]) => Promise<unknown>>>();
const invoke = vi.fn(async (..._args: unknown[]) => 'answer');

vi.mock('electron', () => ({
  contextBridge: { exposeInMainWorld: (name: string, api: never) => exposed.set(name, api) },
  ipcRenderer: { invoke },
}));

beforeAll(() => import('../../../electron/preload/preload'));

it('gives the window one frozen object with one function', () => {
  expect([...exposed.keys()]).toEqual(['latchwork']);
  const api = exposed.get('latchwork')!;
  expect(Object.keys(api)).toEqual(['invoke']);
  expect(Object.isFrozen(api)).toBe(true);
});

it('passes the channels of the contract on', async () => {
  for (const channel of channels)
    expect(await exposed.get('latchwork')!.invoke!(channel, { a: 1 })).toBe('answer');
  expect(invoke).toHaveBeenCalledTimes(channels.length);
});

it.each(['ELECTRON_BROWSER_REQUIRE', 'toString', '', undefined])(
  'refuses the channel %j',
  async (channel) => {
    invoke.mockClear();
    await expect(exposed.get('latchwork')!.invoke!(channel, {})).rejects.toThrow('Unknown channel');
    expect(invoke).not.toHaveBeenCalled();
  },
);

it('is small, and needs nothing but electron: the sandbox has no more', () => {
  const entry = fileURLToPath(new URL('../../../electron/preload/preload.ts', import.meta.url));
  const { outputFiles } = buildSync({
    entryPoints: [entry],
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    external: ['electron'],
  });
  const code = outputFiles[0]!.text;
  expect([...code.matchAll(/require\("([^"]+)"\)/g)].map((match) => match[1])).toEqual(['electron']);
  expect(code.length).toBeLessThan(4000);
  expect(readFileSync(entry, 'utf8')).not.toContain('process');
});
