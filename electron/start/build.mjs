// Builds the window, the shells and the command line into .out; does nothing when no source has changed.
import { createHash } from 'node:crypto';
import { createRequire } from 'node:module';
import { mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));
const out = join(root, '.out');
const stampFile = join(out, 'build.stamp');

const sources = ['core', 'renderer', 'electron', 'assets', 'package-lock.json', 'tsconfig.json'];

/** @param {string} place @returns {Generator<string>} one line per file: path, size and time */
function* stateOf(place) {
  const stat = statSync(join(root, place), { throwIfNoEntry: false });
  if (!stat) return;
  if (!stat.isDirectory()) {
    yield `${place} ${stat.size} ${stat.mtimeMs}`;
    return;
  }
  for (const name of readdirSync(join(root, place)).sort())
    if (name !== 'node_modules' && !name.startsWith('.')) yield* stateOf(`${place}/${name}`);
}

function stampOfSources() {
  const hash = createHash('sha256');
  for (const place of sources) for (const line of stateOf(place)) hash.update(`${line}\n`);
  return hash.digest('hex');
}

function stampOfBuild() {
  try {
    return readFileSync(stampFile, 'utf8');
  } catch {
    return '';
  }
}

/** Builds when needed; answers whether it had to. Throws what the bundlers say. */
export async function ensureBuilt() {
  const stamp = stampOfSources();
  if (stamp === stampOfBuild()) return false;
  rmSync(stampFile, { force: true });
  mkdirSync(out, { recursive: true });
  await Promise.all([buildWindow(), buildShells()]);
  writeFileSync(stampFile, stamp);
  return true;
}

async function buildWindow() {
  const vite = await import('vite');
  await vite.build({ configFile: join(root, 'renderer', 'vite.config.ts'), logLevel: 'warn' });
}

async function buildShells() {
  const esbuild = await import('esbuild');
  await esbuild.build({
    absWorkingDir: root,
    entryPoints: {
      main: 'electron/main/main.ts',
      preload: 'electron/preload/preload.ts',
      host: 'electron/host/main.ts',
      cli: 'electron/cli/bin.ts',
    },
    outdir: '.out/electron',
    outExtension: { '.js': '.cjs' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    external: ['electron'],
    // Its other form looks for its own address, which a bundle of this format does not have.
    alias: { pdfkit: createRequire(import.meta.url).resolve('pdfkit') },
    logLevel: 'warning',
  });
  await esbuild.stop();
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const started = performance.now();
  const built = await ensureBuilt();
  console.log(
    built ? `Built in ${((performance.now() - started) / 1000).toFixed(1)} s.` : 'Nothing to build.',
  );
}
