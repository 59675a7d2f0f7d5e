import * as fs from 'node:fs/promises';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { READ_WITHIN_MS, within } from './deadline';
import { reasonOf } from './reason';

export interface ReadOptions {
  /** "a project": what the file is wanted as. */
  readonly as: string;
  readonly maxBytes: number;
  /** Test seam: the file functions that are used, and how long they may take. */
  readonly io?: Pick<typeof fs, 'stat' | 'readFile'>;
  readonly timeMs?: number;
}

const MB = 1024 * 1024;

/** The bytes of an ordinary file of bounded size, or why not, in a sentence. */
export async function readWhole(
  path: string,
  { as, maxBytes, io = fs, timeMs = READ_WITHIN_MS }: ReadOptions,
): Promise<Result<Buffer, string>> {
  try {
    const found = await within(io.stat(path), timeMs);
    if (found.isDirectory()) return problem('This is a folder, not a file.');
    // A pipe or a device would be read for ever.
    if (!found.isFile()) return problem('This is not an ordinary file.');
    if (found.size > maxBytes)
      return problem(
        `The file is too large to be ${as}: ${(found.size / MB).toFixed(0)} MB, and at most ${maxBytes / MB} MB are read.`,
      );
    return ok(await within(io.readFile(path), timeMs));
  } catch (error) {
    return problem(reasonOf(error));
  }
}

/** The text of UTF-8 bytes with any byte-order mark kept, or null where they are not UTF-8. */
export function utf8Text(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
