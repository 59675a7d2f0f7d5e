import { execFileSync } from 'node:child_process';
import * as fs from 'node:fs/promises';
import { mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { saveProjectFile } from '../../../electron/services/project-file';
import { readProjectFile } from '../../../electron/services/project-file';
import { readWhole, utf8Text } from '../../../electron/services/read-whole';
import { tempFolder } from '../temp-folder';

const file = (bytes: string | Uint8Array, name = 'a.latchwork'): string => {
  const path = join(tempFolder(), name);
  writeFileSync(path, bytes);
  return path;
};
const never = () => new Promise<never>(() => undefined);
const said = async (path: string): Promise<string> => {
  const read = await readProjectFile(path);
  return read.ok ? 'read' : read.problem;
};

describe('a file that is not to be read', () => {
  it('of 200 MB is refused at once, with its size', async () => {
    const path = file('{');
    truncateSync(path, 200 * 1024 * 1024);
    expect(await said(path)).toBe(
      'The file is too large to be a project: 200 MB, and at most 128 MB are read.',
    );
  });

  it.each([
    ['a folder', () => (mkdirSync(join(tempFolder(), 'x')), tempFolder()), 'This is a folder, not a file.'],
    ['nothing', () => join(tempFolder(), 'x'), 'The file or folder does not exist.'],
    ['a file below a file', () => join(file('x'), 'y'), 'A part of the path is not a folder.'],
    ['bytes of another encoding', () => file(Buffer.from([0x7b, 0xe9, 0x7d])), 'The file is not UTF-8 text.'],
    ['UTF-16', () => file(Buffer.from('\ufeff{}', 'utf16le')), 'The file is not UTF-8 text.'],
    ['half a character', () => file(Buffer.from('{"a":"Ω"}').subarray(0, 7)), 'The file is not UTF-8 text.'],
  ])('%s', async (_, make, problem) => expect(await said(make())).toBe(problem));

  it.skipIf(process.platform === 'win32')('a pipe is not waited for', async () => {
    const path = join(tempFolder(), 'pipe.latchwork');
    execFileSync('mkfifo', [path]);
    expect(await said(path)).toBe('This is not an ordinary file.');
  });

  it.skipIf(process.platform === 'win32')('a device is not read for ever', async () => {
    expect(await said('/dev/zero')).toBe('This is not an ordinary file.');
  });

  it.skipIf(process.platform === 'win32')('a link in a circle', async () => {
    const path = join(tempFolder(), 'a');
    symlinkSync(path, path);
    expect(await said(path)).toBe('The link leads in a circle.');
  });
});

describe('a disk that does not answer', () => {
  const stalled = 'The disk or network did not answer in time; what was begun may still end well.';

  it.each([
    ['stat', { stat: never, readFile: fs.readFile }],
    ['read', { stat: fs.stat, readFile: never }],
  ] as const)('at %s: reading gives up with a sentence', async (_, io) => {
    const read = await readWhole(file('text'), {
      as: 'a project', maxBytes: 1024, timeMs: 20, io: io as unknown as Pick<typeof fs, 'stat' | 'readFile'>,
    }); // prettier-ignore
    expect(read).toEqual({ ok: false, problem: stalled });
  });

  it('lets a save give up, and the file is the old one or the new one', async () => {
    const path = file('old');
    const answer = await saveProjectFile(path, 'new', null, 0);
    expect(answer).toEqual({ status: 'failed', reason: stalled });
    await expect
      .poll(async () => ['old', 'new'].includes(utf8Text(await fs.readFile(path)) ?? ''))
      .toBe(true);
  });
});
