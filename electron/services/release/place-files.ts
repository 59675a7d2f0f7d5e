import { randomBytes } from 'node:crypto';
import { mkdir, readFile, readdir, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { isMissing } from '../reason';
import type { MadeFile } from './make-files';

/**
 * Puts files where nothing stood, all of them or none: they are written into a temporary folder beside, flushed, and then
 * renamed. `names` are the top-level names that appear in `folder`. Throws the system's error, or the reason of the signal.
 */
export async function placeFiles(
  folder: string,
  names: readonly string[],
  files: readonly MadeFile[],
  signal?: AbortSignal,
): Promise<void> {
  await mkdir(folder, { recursive: true });
  const temporary = join(folder, `.latchwork-${randomBytes(6).toString('hex')}.tmp`);
  const placed: string[] = [];
  try {
    for (const { path, bytes } of files) {
      signal?.throwIfAborted();
      const target = join(temporary, ...path.split('/'));
      await mkdir(dirname(target), { recursive: true });
      await writeFile(target, bytes, { flag: 'wx', flush: true });
    }
    signal?.throwIfAborted();
    for (const name of names) {
      await mustBeFree(join(folder, name));
      await rename(join(temporary, name), join(folder, name));
      placed.push(name);
    }
  } catch (error) {
    for (const name of placed) await rm(join(folder, name), { recursive: true, force: true }).catch(() => undefined);
    throw error;
  } finally {
    await rm(temporary, { recursive: true, force: true }).catch(() => undefined);
  }
} // prettier-ignore

/** A rename takes the place of a file without a word. */
async function mustBeFree(path: string): Promise<void> {
  if (await isThere(path)) throw Object.assign(new Error('The name is taken'), { code: 'EEXIST' });
}

export async function isThere(path: string): Promise<boolean> {
  try {
    await stat(path);
    return true;
  } catch (error) {
    if (isMissing(error)) return false;
    throw error;
  }
}

/** The first file that a folder holds otherwise, lacks, or has too many of; null where it holds just these. */
export async function differenceFrom(folder: string, files: readonly MadeFile[]): Promise<string | null> {
  const folders = files.flatMap(({ path }) => path.split('/').map((_, i, all) => all.slice(0, i).join('/')));
  const wanted = new Set([...files.map((f) => f.path), ...folders]);
  const found = (await readdir(folder, { recursive: true })).map((path) => path.replaceAll('\\', '/')).sort();
  const extra = found.find((path) => !wanted.has(path));
  if (extra !== undefined) return extra;
  for (const { path, bytes } of files) {
    const there = await readFile(join(folder, ...path.split('/'))).catch(() => null);
    if (there === null || Buffer.compare(there, bytes) !== 0) return path;
  }
  return null;
} // prettier-ignore
