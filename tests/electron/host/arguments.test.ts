import { expect, it } from 'vitest';
import { appWindowArguments } from '../../../electron/host/app-window';
import { hostArguments } from '../../../electron/host/arguments';

it('reads its words', () => {
  expect(hostArguments(['x.latchwork', '--port', '8080', '--folder=w', '--data', 'd', '--window'])).toEqual({
    ok: true,
    value: { port: 8080, window: true, folder: 'w', data: 'd', demo: null, file: 'x.latchwork' },
  });
});

it.each([[['--port', 'x']], [['--port', '70000']], [['a', 'b']], [['--nothing']]])('refuses %j', (argv) => {
  expect(hostArguments(argv).ok).toBe(false);
});

it('opens the window on a profile of its own, and gives up the sandbox only for root', () => {
  const user = appWindowArguments('http://127.0.0.1:1/', '/data', false);
  expect(user).toContain('--app=http://127.0.0.1:1/');
  expect(user.some((word) => word.startsWith('--user-data-dir='))).toBe(true);
  expect(user).not.toContain('--no-sandbox');
  expect(appWindowArguments('http://127.0.0.1:1/', '/data', true)).toContain('--no-sandbox');
});
