import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { initialFrom } from '../../../electron/main/start-up';

it.each([
  [['electron', '.', 'x.latchwork'], { path: resolve('/work', 'x.latchwork') }],
  [['latchwork', '--no-first-run', '/a/x.latchwork'], { path: resolve('/a/x.latchwork') }],
  [['electron', '.', '--demo=bench-lamp'], { demo: 'bench-lamp' }],
  [['latchwork'], null],
  [['latchwork', '--x.latchwork', 'notes.txt'], null],
])('%j opens %j', (argv, initial) => {
  expect(initialFrom(argv, '/work')).toEqual(initial);
});
