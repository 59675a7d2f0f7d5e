// npm start: installs, builds and opens the window, also on a fresh clone. Uses only what comes with Node.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { ensureBuilt, root } from './build.mjs';
import { chooseShell } from './choose-shell.mjs';
import { electronExecutable, fetchElectron } from './electron-runtime.mjs';
import { ensureInstalled } from './install.mjs';
import { withFirstDemo } from './start-arguments.mjs';

if (!ensureInstalled(root)) {
  console.error('The packages could not be installed; see above.');
  process.exit(2);
}
await ensureBuilt();

const argv = process.argv.slice(2);
const { shell, why } = chooseShell(argv, {
  platform: process.platform,
  env: process.env,
  root: process.getuid?.() === 0,
  electronReady: () => fetchElectron(root),
});

const names = {
  electron: 'Opening in Electron',
  browser: 'Opening in a browser window',
  serve: 'Serving without a window',
};
console.log(`${names[shell]}: ${why}.`);

const passed = withFirstDemo(argv, (demo) => existsSync(join(root, 'demo-projects', `${demo}.latchwork`)));
const [program, args] = commandFor(shell, passed);
const child = spawn(program, args, { cwd: process.env.INIT_CWD ?? process.cwd(), stdio: 'inherit' });
child.once('error', (error) => {
  console.error(`It did not start: ${error.message}`);
  process.exitCode = 2;
});
child.once('exit', (code) => {
  process.exitCode = code ?? 0;
});
for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM']))
  process.on(signal, () => child.kill(signal));

/**
 * @param {'electron' | 'browser' | 'serve'} wanted
 * @param {string[]} rest
 * @returns {[string, string[]]}
 */
function commandFor(wanted, rest) {
  const host = join(root, '.out', 'electron', 'host.cjs');
  if (wanted === 'serve') return [process.execPath, [host, ...rest]];
  const electron = wanted === 'electron' ? electronExecutable(root) : null;
  if (electron) return [electron, [root, ...rest]];
  return [process.execPath, [host, '--window', ...rest]];
}
