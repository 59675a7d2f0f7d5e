/**
 * @typedef {object} Machine
 * @property {NodeJS.Platform} platform
 * @property {Record<string, string | undefined>} env
 * @property {boolean} root
 * @property {() => boolean} electronReady looks for the runtime, and fetches it where that is possible
 */

/** @typedef {{ shell: 'electron' | 'browser' | 'serve'; why: string }} Choice */

/** @param {NodeJS.Platform} platform @param {Record<string, string | undefined>} env @returns {string | null} */
function whyNoScreen(platform, env) {
  if (env.CI && env.CI !== 'false') return 'this is a continuous-integration run (CI is set)';
  const drawsByServer = platform !== 'win32' && platform !== 'darwin';
  if (drawsByServer && !env.DISPLAY && !env.WAYLAND_DISPLAY)
    return 'there is no screen (neither DISPLAY nor WAYLAND_DISPLAY is set)';
  return null;
}

/**
 * Electron where it can run, else the browser host in a window, else the browser host alone.
 * @param {readonly string[]} argv may force a choice: --electron, --browser or --serve
 * @param {Machine} machine
 * @returns {Choice}
 */
export function chooseShell(argv, { platform, env, root, electronReady }) {
  if (argv.includes('--serve')) return { shell: 'serve', why: 'it was asked for' };
  if (argv.includes('--browser')) return { shell: 'browser', why: 'it was asked for' };
  if (argv.includes('--electron')) return { shell: 'electron', why: 'it was asked for' };
  const noScreen = whyNoScreen(platform, env);
  if (noScreen) return { shell: 'serve', why: noScreen };
  if (platform === 'linux' && root) return { shell: 'browser', why: 'Electron does not start for root' };
  if (electronReady()) return { shell: 'electron', why: 'its runtime is here' };
  return { shell: 'browser', why: 'the Electron runtime is not here and could not be fetched' };
}
