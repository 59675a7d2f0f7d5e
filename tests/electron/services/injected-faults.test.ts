import * as fs from 'node:fs/promises';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeAtomically, type WriteOptions } from '../../../electron/services/atomic-write';
import { reasonOf } from '../../../electron/services/reason';
import { tempFolder } from '../temp-folder';

type Io = NonNullable<WriteOptions['io']>;

const CODES = [
  'ENOSPC',
  'EDQUOT',
  'EROFS',
  'EACCES',
  'EPERM',
  'EIO',
  'EMFILE',
  'EFBIG',
  'ENODEV',
  'ESTALE',
  'ETIMEDOUT',
];

/** Steps of a write, each as the function in which the fault comes. */
const STEPS: readonly (readonly [string, (fault: () => never) => Io])[] = [
  ['opening the temporary file', (fault) => ({ ...fs, open: async () => fault() })],
  ['writing', (fault) => ({ ...fs, open: handleThat({ writeFile: async () => fault() }) })],
  ['writing, after half of it', (fault) => ({
    ...fs,
    open: handleThat({
      async writeFile(this: fs.FileHandle, bytes) {
        await this.write(bytes as Uint8Array, 0, 3);
        fault();
      },
    }),
  })],
  ['flushing', (fault) => ({ ...fs, open: handleThat({ sync: async () => fault() }) })],
  ['renaming', (fault) => ({ ...fs, rename: async () => fault() })],
  ['closing', (fault) => ({ ...fs, open: handleThat({ close: async () => fault() }) })],
]; // prettier-ignore

/** Opens for real; of the handle to write, some functions are exchanged. */
const handleThat =
  (change: Partial<fs.FileHandle>): Io['open'] =>
  async (path, flags, mode) => {
    const handle = await fs.open(path, flags, mode);
    if (flags !== 'wx') return handle;
    const close = handle.close.bind(handle);
    return new Proxy(handle, {
      get(target, key) {
        const changed = change[key as keyof fs.FileHandle] as ((...args: unknown[]) => unknown) | undefined;
        if (key === 'close' && changed) return () => close().then(() => changed.call(target));
        if (changed) return changed.bind(target);
        const value = Reflect.get(target, key) as unknown;
        return typeof value === 'function' ? (value as () => unknown).bind(target) : value;
      },
    });
  };

describe.each(STEPS)('a fault in %s', (step, ioWith) => {
  it.each(CODES)(
    '(%s) leaves the old file as it was, nothing beside it, and a sentence',
    { timeout: 20_000 },
    async (code) => {
      const folder = tempFolder();
      const path = join(folder, 'lamp.latchwork');
      writeFileSync(path, 'old');
      const io = ioWith(() => {
        throw Object.assign(new Error(code), { code });
      });
      const error = await writeAtomically(path, Buffer.from('new text'), { io }).then(
        () => null,
        (e: unknown) => e,
      );
      expect(error, step).toMatchObject({ code });
      expect(readFileSync(path, 'utf8')).toBe('old');
      expect(readdirSync(folder)).toEqual(['lamp.latchwork']);
      expect(reasonOf(error)).toMatch(/^[A-Z][^/]*\.$/);
    },
  );
});
