// The electron package comes without its runtime and fetches it at first use.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';

const FETCH_LIMIT_MS = 300_000;

/** @param {string} root @returns {string | null} the executable, where it is on this disk */
export function electronExecutable(root, env = process.env) {
  const folder = join(root, 'node_modules', 'electron');
  const named = join(folder, 'path.txt');
  const name = existsSync(named) ? readFileSync(named, 'utf8') : 'electron';
  const path = env.ELECTRON_OVERRIDE_DIST_PATH
    ? join(env.ELECTRON_OVERRIDE_DIST_PATH, name)
    : join(folder, 'dist', name);
  return existsSync(path) ? path : null;
}

/** @param {string} root @returns {boolean} */
export function fetchElectron(root) {
  if (electronExecutable(root)) return true;
  console.log('Fetching the Electron runtime …');
  spawnSync(process.execPath, [join(root, 'node_modules', 'electron', 'install.js')], {
    cwd: root,
    // What it prints on failure is a stack trace; the choice of shell says what follows from it.
    stdio: 'ignore',
    timeout: FETCH_LIMIT_MS,
  });
  return electronExecutable(root) !== null;
}
