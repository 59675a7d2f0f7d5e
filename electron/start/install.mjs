// Installs the packages when what lies in node_modules is not what the lock file says. Needs no package itself.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';

/** @typedef {Record<string, { version?: string; optional?: boolean; peer?: boolean; link?: boolean }>} Packages */

/** @param {string} path @returns {Packages | null} */
function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages;
  } catch {
    return null;
  }
}

/**
 * Compares contents, not times: a checkout gives the lock file a new time without any change.
 * @param {Packages | null} wanted from package-lock.json
 * @param {Packages | null} found from node_modules/.package-lock.json, which npm writes after an install
 */
export function isInstalled(wanted, found) {
  if (!wanted || !found) return false;
  return Object.entries(wanted).every(([place, entry]) => {
    if (!place.startsWith('node_modules/') && !place.includes('/node_modules/')) return true;
    const there = found[place];
    // Packages for other systems are in the lock file but not on this disk.
    return there ? entry.link || there.version === entry.version : entry.optional === true;
  });
}

/** @param {string} root @returns {boolean} whether the packages are there now */
export function ensureInstalled(root) {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  if (isInstalled(wanted, packagesIn(join(root, 'node_modules', '.package-lock.json')))) return true;
  console.error('Installing packages (npm ci) …');
  // Not to stdout: that may be the result of a command.
  /** @type {import('node:child_process').StdioOptions} */
  const stdio = ['ignore', 2, 2];
  const npm = process.env.npm_execpath;
  const { status } = npm
    ? spawnSync(process.execPath, [npm, 'ci', '--no-audit', '--no-fund', '--loglevel=error'], {
        cwd: root,
        stdio,
      })
    : spawnSync('npm ci --no-audit --no-fund --loglevel=error', { cwd: root, stdio, shell: true });
  return status === 0;
}
