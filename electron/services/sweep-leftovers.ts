import { readdir, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** A write takes seconds; what lies there after this was left by a program that was ended in the middle. */
const LEFT_AFTER_MS = 10 * 60 * 1000;

/** Takes away temporary files of `path` that a broken-off write has left. Quiet: it is only tidiness. */
export async function sweepLeftovers(path: string, now = Date.now()): Promise<void> {
  const folder = dirname(path);
  const begins = `.${basename(path)}.`;
  const names = await readdir(folder).catch(() => []);
  const temporary = names.filter(
    (name) => name.startsWith(begins) && /^[0-9a-f]{12}[.]tmp$/.test(name.slice(begins.length)),
  );
  await Promise.all(
    temporary.map(async (name) => {
      const left = join(folder, name);
      const { mtimeMs } = await stat(left).catch(() => ({ mtimeMs: now }));
      if (now - mtimeMs > LEFT_AFTER_MS) await rm(left, { force: true }).catch(() => undefined);
    }),
  );
}
