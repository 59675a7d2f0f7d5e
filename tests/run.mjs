// npm test: every check of the project, also on a fresh clone. Ends with the line "N passed, N failed".
//   --static            types, lint, format and imports only
//   --only NAME[,NAME]  the named steps only
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { ensureBuilt, root } from '../electron/start/build.mjs';
import { ensureInstalled } from '../electron/start/install.mjs';
import { ensureChromium } from './ensure-chromium.mjs';
import { countResults } from './count-results.mjs';

const results = join(root, '.out', 'tests');

/** As it was given to us: building the window sets NODE_ENV, and React's test helpers are missing from a production build. */
const env = { ...process.env };

/** @typedef {{ passed: number; failed: number }} Counts */

/**
 * Runs a tool of node_modules with Node, so that it works the same on every system.
 * @param {string} script
 * @param {string[]} args
 */
function tool(script, ...args) {
  const { status, error } = spawnSync(process.execPath, [join(root, 'node_modules', script), ...args], {
    cwd: root,
    env,
    stdio: 'inherit',
  });
  if (error) console.error(error.message);
  return status === 0;
}

/** @param {string} script @param {string[]} args @returns {() => Counts} */
const check =
  (script, ...args) =>
  () =>
    tool(script, ...args) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

/** @param {string} name @param {string[]} projects @returns {() => Counts} */
const vitest =
  (name, ...projects) =>
  () => {
    const file = join(results, `${name}.json`);
    rmSync(file, { force: true });
    const ran = tool(
      'vitest/vitest.mjs',
      'run',
      '--config',
      'tests/vitest.config.ts',
      ...projects.flatMap((project) => ['--project', project]),
      '--reporter=dot',
      '--reporter=json',
      `--outputFile.json=${file}`,
    );
    return countResults(file, ran);
  };

const eslint = {
  script: 'eslint/bin/eslint.js',
  args: ['--config', 'tests/architecture/eslint.config.js', '--max-warnings', '0', '.'],
};
const depcruise = {
  script: 'dependency-cruiser/bin/dependency-cruise.mjs',
  args: ['--config', 'tests/architecture/dependency-cruiser.config.cjs', 'core', 'renderer', 'electron'],
};

const staticSteps = {
  types: check('@typescript/native/bin/tsc', '-b'),
  lint: check(eslint.script, ...eslint.args),
  format: check('prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.'),
  imports: check(depcruise.script, ...depcruise.args),
};

const otherSteps = {
  build: async () => {
    try {
      await ensureBuilt();
      return { passed: 1, failed: 0 };
    } catch (error) {
      console.error(error);
      return { passed: 0, failed: 1 };
    }
  },
  unit: vitest('unit', 'core', 'electron', 'architecture'),
  browser: vitest('browser', 'renderer'),
  e2e: vitest('e2e', 'e2e'),
};

const argv = process.argv.slice(2);
const only = argv.includes('--only') ? (argv[argv.indexOf('--only') + 1] ?? '').split(',') : null;
/** @type {Record<string, () => Counts | Promise<Counts>>} */
const all = argv.includes('--static') ? staticSteps : { ...staticSteps, ...otherSteps };
const steps = Object.entries(all).filter(([name]) => !only || only.includes(name));

if (!ensureInstalled(root)) {
  console.error('The packages could not be installed; see above.');
  console.log('0 passed, 1 failed');
  process.exit(1);
}
mkdirSync(results, { recursive: true });

const total = { passed: 0, failed: 0 };
/** @type {string[]} */
const lines = [];
for (const [name, step] of steps) {
  console.log(`\n── ${name}`);
  const started = performance.now();
  const needsBrowser = name === 'browser' || name === 'e2e';
  const { passed, failed } = needsBrowser && !ensureChromium() ? { passed: 0, failed: 1 } : await step();
  total.passed += passed;
  total.failed += failed;
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  lines.push(
    `${name.padEnd(8)} ${String(passed).padStart(5)} passed ${String(failed).padStart(3)} failed ${seconds.padStart(7)} s`,
  );
}

console.log(`\n${lines.join('\n')}\n\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 && total.passed > 0 ? 0 : 1;
