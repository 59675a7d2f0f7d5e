import { spawnSync } from 'node:child_process';
import process from 'node:process';
import { findChromium } from '../electron/start/chromium.mjs';

const hint = `No Chromium was found. The browser tests need one:
  Debian, Ubuntu:  sudo apt-get install chromium
  elsewhere:       install Chromium or Chrome, or set CHROMIUM_PATH to its executable`;

/** Finds a Chromium, or installs it where that is possible without asking. @returns {boolean} */
export function ensureChromium() {
  if (findChromium()) return true;
  if (process.platform === 'linux' && process.getuid?.() === 0 && !process.env.CHROMIUM_PATH) {
    console.log('Installing Chromium (apt-get) …');
    /** @param {string[]} args */
    const apt = (...args) =>
      spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=120', ...args], {
        stdio: 'inherit',
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      }).status === 0;
    // One source that does not answer fails the update; the lists of the others may still do.
    apt('update');
    if (apt('install', '-y', '--no-install-recommends', 'chromium') && findChromium()) return true;
  }
  console.error(hint);
  return false;
}
