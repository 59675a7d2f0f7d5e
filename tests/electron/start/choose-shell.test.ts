import { describe, expect, it } from 'vitest';
import { chooseShell } from '../../../electron/start/choose-shell.mjs';
import { isInstalled } from '../../../electron/start/install.mjs';
import { withFirstDemo } from '../../../electron/start/start-arguments.mjs';

type Machine = Parameters<typeof chooseShell>[1];
const desk: Machine = { platform: 'linux', env: { DISPLAY: ':0' }, root: false, electronReady: () => true };

describe('chooseShell', () => {
  it.each<[string, Partial<Machine>, string[], string]>([
    ['a desk with the runtime', {}, [], 'electron'],
    ['a desk without it', { electronReady: () => false }, [], 'browser'],
    ['root', { root: true }, [], 'browser'],
    ['no screen', { env: {} }, [], 'serve'],
    ['a Wayland screen', { env: { WAYLAND_DISPLAY: 'wayland-0' } }, [], 'electron'],
    ['Windows, where no variable tells', { platform: 'win32', env: {} }, [], 'electron'],
    ['macOS, where no variable tells', { platform: 'darwin', env: {} }, [], 'electron'],
    ['continuous integration', { env: { DISPLAY: ':0', CI: 'true' } }, [], 'serve'],
    ['a wish to serve', {}, ['--serve'], 'serve'],
    ['a wish for a browser', {}, ['--browser'], 'browser'],
  ])('%s', (_what, machine, argv, shell) => {
    const choice = chooseShell(argv, { ...desk, ...machine });
    expect(choice.shell).toBe(shell);
    expect(choice.why).not.toBe('');
  });

  it('does not fetch a runtime that nobody would see', () => {
    const electronReady = () => {
      throw new Error('asked');
    };
    expect(chooseShell([], { ...desk, env: {}, electronReady }).shell).toBe('serve');
  });
});

describe('withFirstDemo', () => {
  const there = () => true;
  it.each([
    [[], ['--demo=bench-lamp']],
    [
      ['--serve', '--port', '1'],
      ['--port', '1', '--demo=bench-lamp'],
    ],
    [['x.latchwork'], ['x.latchwork']],
    [['--demo=other'], ['--demo=other']],
  ])('%j becomes %j', (argv, passed) => {
    expect(withFirstDemo(argv, there)).toEqual(passed);
  });

  it('opens nothing when there is no demo', () => {
    expect(withFirstDemo([], () => false)).toEqual([]);
  });
});

describe('isInstalled', () => {
  const wanted = {
    '': { version: '1.0.0' },
    core: { version: '1.0.0' },
    'node_modules/@latchwork/core': { link: true },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/other-system': { version: '1.0.0', optional: true },
  };
  const link = { 'node_modules/@latchwork/core': { link: true } };

  it.each<[string, Parameters<typeof isInstalled>[1], boolean]>([
    ['the same', { ...link, 'node_modules/a': { version: '1.0.0' } }, true],
    ['an older one', { ...link, 'node_modules/a': { version: '0.9.0' } }, false],
    ['one missing', link, false],
    ['the link of a workspace missing', { 'node_modules/a': { version: '1.0.0' } }, false],
    ['nothing', null, false],
  ])('%s', (_what, found, installed) => {
    expect(isInstalled(wanted, found)).toBe(installed);
  });
});
