import { randomBytes } from 'node:crypto';
import * as fs from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

export interface WriteOptions {
  /** Fails with EEXIST instead of replacing a file. */
  readonly mustBeNew?: boolean;
  /** Test seam: the file functions that are used. */
  readonly io?: Pick<typeof fs, 'open' | 'rename' | 'rm' | 'realpath' | 'stat'>;
}

const RENAME_TRIES = 6;
const heldByOthers = new Set(['EPERM', 'EACCES', 'EBUSY']);

/**
 * Replaces a file as a whole or not at all: a temporary file in the same folder, flushed, then renamed over it.
 * Whatever fails, the old file keeps its bytes and the temporary file is removed. Throws the system's error.
 */
export async function writeAtomically(
  path: string,
  bytes: Uint8Array,
  { mustBeNew = false, io = fs }: WriteOptions = {},
): Promise<void> {
  // A link keeps pointing at its file.
  const target = await io.realpath(path).catch(() => path);
  const folder = dirname(target);
  const temporary = join(folder, `.${basename(target)}.${randomBytes(6).toString('hex')}.tmp`);
  const mode = await io.stat(target).then(
    (found) => found.mode & 0o777,
    () => 0o644,
  );
  let reserved = false;
  try {
    const handle = await io.open(temporary, 'wx', mode);
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    if (mustBeNew) {
      await reserve(io, target);
      reserved = true;
    }
    await renamePatiently(io, temporary, target);
  } catch (error) {
    await io.rm(temporary, { force: true }).catch(() => undefined);
    if (reserved) await io.rm(target, { force: true }).catch(() => undefined);
    throw error;
  }
  await flushFolder(io, folder);
}

/** Takes the name, or fails with EEXIST: between looking and writing nobody else can take it. */
async function reserve(io: Pick<typeof fs, 'open'>, path: string): Promise<void> {
  const handle = await io.open(path, 'wx');
  await handle.close();
}

/** Virus scanners and synchronisers hold a file for a moment on some systems. */
async function renamePatiently(io: Pick<typeof fs, 'rename'>, from: string, to: string): Promise<void> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await io.rename(from, to);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : '';
      if (attempt === RENAME_TRIES || !heldByOthers.has(code)) throw error;
      await new Promise((resolve) => setTimeout(resolve, 20 * 2 ** attempt));
    }
  }
}

/** Makes the rename itself survive a power cut. Some systems cannot open a folder; the file itself is flushed already. */
async function flushFolder(io: Pick<typeof fs, 'open'>, folder: string): Promise<void> {
  const handle = await io.open(folder, 'r').catch(() => null);
  if (!handle) return;
  await handle.sync().catch(() => undefined);
  await handle.close();
}
