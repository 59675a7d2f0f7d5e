import * as fs from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeAtomically } from '../../../electron/services/atomic-write';
import { tempFolder } from '../temp-folder';

const bytes = (text: string) => Buffer.from(text);
const failure = (code: string) => Object.assign(new Error(code), { code });

describe('writeAtomically', () => {
  it('writes a new file and leaves nothing beside it', async () => {
    const folder = tempFolder();
    await writeAtomically(join(folder, 'a.txt'), bytes('one'));
    expect(await fs.readFile(join(folder, 'a.txt'), 'utf8')).toBe('one');
    expect(await fs.readdir(folder)).toEqual(['a.txt']);
  });

  it('replaces a file and keeps its mode', async () => {
    const folder = tempFolder();
    const path = join(folder, 'a.txt');
    await fs.writeFile(path, 'old', { mode: 0o600 });
    await writeAtomically(path, bytes('new'));
    expect(await fs.readFile(path, 'utf8')).toBe('new');
    if (process.platform !== 'win32') expect((await fs.stat(path)).mode & 0o777).toBe(0o600);
  });

  it('writes through a link', async () => {
    const folder = tempFolder();
    await fs.writeFile(join(folder, 'real.txt'), 'old');
    await fs.symlink(join(folder, 'real.txt'), join(folder, 'link.txt'));
    await writeAtomically(join(folder, 'link.txt'), bytes('new'));
    expect(await fs.readFile(join(folder, 'real.txt'), 'utf8')).toBe('new');
    expect((await fs.lstat(join(folder, 'link.txt'))).isSymbolicLink()).toBe(true);
  });

  it('keeps the old bytes when the write breaks half-way', async () => {
    const folder = tempFolder();
    const path = join(folder, 'a.txt');
    await fs.writeFile(path, 'old');
    const io: typeof fs = {
      ...fs,
      open: async (...args: Parameters<typeof fs.open>) => {
        const handle = await fs.open(...args);
        handle.writeFile = async () => {
          await handle.write('ne');
          throw failure('ENOSPC');
        };
        return handle;
      },
    };
    await expect(writeAtomically(path, bytes('new'), { io })).rejects.toThrow('ENOSPC');
    expect(await fs.readFile(path, 'utf8')).toBe('old');
    expect(await fs.readdir(folder)).toEqual(['a.txt']);
  });

  it('flushes before it renames', async () => {
    const folder = tempFolder();
    const order: string[] = [];
    const io: typeof fs = {
      ...fs,
      open: async (...args: Parameters<typeof fs.open>) => {
        const handle = await fs.open(...args);
        const sync = handle.sync.bind(handle);
        handle.sync = () => {
          order.push('flush');
          return sync();
        };
        return handle;
      },
      rename: (from, to) => {
        order.push('rename');
        return fs.rename(from, to);
      },
    };
    await writeAtomically(join(folder, 'a.txt'), bytes('x'), { io });
    expect(order.slice(0, 2)).toEqual(['flush', 'rename']);
  });

  it('waits for a program that holds the file for a moment', async () => {
    const folder = tempFolder();
    let tries = 0;
    const io: typeof fs = {
      ...fs,
      rename: async (from, to) => {
        if (++tries < 3) throw failure('EBUSY');
        return fs.rename(from, to);
      },
    };
    await writeAtomically(join(folder, 'a.txt'), bytes('x'), { io });
    expect(tries).toBe(3);
  });

  it('gives up on a file that stays held, and cleans up', async () => {
    const folder = tempFolder();
    const io: typeof fs = { ...fs, rename: async () => Promise.reject(failure('EBUSY')) };
    await expect(writeAtomically(join(folder, 'a.txt'), bytes('x'), { io })).rejects.toThrow('EBUSY');
    expect(await fs.readdir(folder)).toEqual([]);
  });

  it('does not replace a file when it must be new', async () => {
    const folder = tempFolder();
    const path = join(folder, 'a.txt');
    await fs.writeFile(path, 'old');
    await expect(writeAtomically(path, bytes('new'), { mustBeNew: true })).rejects.toMatchObject({
      code: 'EEXIST',
    });
    expect(await fs.readFile(path, 'utf8')).toBe('old');
    expect(await fs.readdir(folder)).toEqual(['a.txt']);
  });

  it('leaves no empty file when a new one cannot be finished', async () => {
    const folder = tempFolder();
    const io: typeof fs = { ...fs, rename: async () => Promise.reject(failure('EIO')) };
    await expect(writeAtomically(join(folder, 'a.txt'), bytes('x'), { mustBeNew: true, io })).rejects.toThrow(
      'EIO',
    );
    expect(await fs.readdir(folder)).toEqual([]);
  });

  it('lets two writers at once leave one whole text', async () => {
    const path = join(tempFolder(), 'a.txt');
    const texts = ['a', 'b', 'c', 'd'].map((letter) => letter.repeat(200_000));
    await Promise.all(texts.map((text) => writeAtomically(path, bytes(text))));
    expect(texts).toContain(await fs.readFile(path, 'utf8'));
  });
});
