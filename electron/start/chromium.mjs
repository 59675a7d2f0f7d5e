// Where a Chromium is, and how tests start it. Plain JavaScript: the runner needs it before anything is installed.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import process from 'node:process';

const names = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'microsoft-edge',
];

/** @type {Partial<Record<NodeJS.Platform, string[]>>} */
const fixedPlaces = {
  linux: [
    '/usr/bin/chromium',
    '/usr/lib/chromium/chromium',
    '/snap/bin/chromium',
    '/opt/google/chrome/chrome',
  ],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].flatMap(
    (base) =>
      base
        ? [
            join(base, 'Chromium', 'Application', 'chrome.exe'),
            join(base, 'Google', 'Chrome', 'Application', 'chrome.exe'),
            join(base, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
          ]
        : [],
  ),
};

/**
 * The path of a Chromium, or null. CHROMIUM_PATH wins, and when it points at nothing the answer is null.
 * @param {Record<string, string | undefined>} env
 * @param {NodeJS.Platform} platform
 * @param {(path: string) => boolean} exists
 * @returns {string | null}
 */
export function findChromium(env = process.env, platform = process.platform, exists = existsSync) {
  if (env.CHROMIUM_PATH) return exists(env.CHROMIUM_PATH) ? env.CHROMIUM_PATH : null;
  const suffix = platform === 'win32' ? '.exe' : '';
  const onPath = (env.PATH ?? '')
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => names.map((name) => join(folder, name + suffix)));
  return [...(fixedPlaces[platform] ?? []), ...onPath].find((path) => exists(path)) ?? null;
}

/** Quiet, offline, and able to run as root inside a container. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
