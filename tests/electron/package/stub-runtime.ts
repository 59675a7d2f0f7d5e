import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where Electron's binary keeps its fuses: this mark, a version byte, a length byte, then one character per fuse. */
export const FUSE_MARK = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
export const FUSE_COUNT = 9;

/** A folder with the shape of an unpacked Electron, for packaging without the real one. */
export function stubRuntime(folder: string, version: string): string {
  mkdirSync(join(folder, 'locales'), { recursive: true });
  mkdirSync(join(folder, 'resources'));
  // As they come from the factory: everything that can be off is off, and running as Node is on.
  const fuses = Buffer.concat([
    Buffer.from(FUSE_MARK),
    Buffer.from([1, FUSE_COUNT]),
    Buffer.from('1'.padEnd(FUSE_COUNT, '0')),
  ]);
  writeFileSync(join(folder, 'electron'), Buffer.concat([Buffer.from('#!/bin/sh\nexit 0\n'), fuses]));
  chmodSync(join(folder, 'electron'), 0o755);
  writeFileSync(join(folder, 'version'), version);
  for (const name of ['LICENSE', 'LICENSES.chromium.html', 'chrome-sandbox', 'locales/en-US.pak'])
    writeFileSync(join(folder, name), '');
  return folder;
}
