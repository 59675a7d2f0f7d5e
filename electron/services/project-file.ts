import { readFile } from 'node:fs/promises';
import { type OnDiskAnswer, type SaveAnswer } from '@latchwork/core/bridge/answers';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { writeAtomically } from './atomic-write';
import { READ_WITHIN_MS, within, WRITE_WITHIN_MS } from './deadline';
import { readWhole, utf8Text } from './read-whole';
import { failed, isMissing, reasonOf } from './reason';
import { revisionOf } from './revision';

export const PROJECT_ENDING = '.latchwork';

/** Ten times a harness of 10,000 wires; below what would exhaust the memory. */
export const MAX_PROJECT_BYTES = 128 * 1024 * 1024;

export const readProjectBytes = (path: string): Promise<Result<Buffer, string>> =>
  readWhole(path, { as: 'a project', maxBytes: MAX_PROJECT_BYTES });

/** Text and revision of a project file, or a reason. What the text means is not asked here. */
export async function readProjectFile(
  path: string,
): Promise<Result<{ text: string; revision: string }, string>> {
  const read = await readProjectBytes(path);
  if (!read.ok) return read;
  const text = utf8Text(read.value);
  return text === null
    ? problem('The file is not UTF-8 text.')
    : ok({ text, revision: revisionOf(read.value) });
}

/**
 * Writes the text unless the file has changed since `revision`; null writes in any case.
 * A file that has vanished is written again: nothing of anyone's is lost by that.
 */
export async function saveProjectFile(
  path: string,
  text: string,
  revision: string | null,
  timeMs = WRITE_WITHIN_MS,
): Promise<SaveAnswer> {
  const bytes = Buffer.from(text, 'utf8');
  try {
    if (revision !== null) {
      const found = await within(revisionOnDisk(path), timeMs);
      if (found !== null && found !== revision) return { status: 'changed-on-disk', revision: found };
    }
    await within(writeAtomically(path, bytes), timeMs);
    return { status: 'saved', revision: revisionOf(bytes) };
  } catch (error) {
    return failed(reasonOf(error));
  }
}

export async function compareOnDisk(path: string, revision: string): Promise<OnDiskAnswer> {
  try {
    const found = await within(revisionOnDisk(path), READ_WITHIN_MS);
    if (found === null) return { status: 'gone' };
    return found === revision ? { status: 'same' } : { status: 'changed', revision: found };
  } catch (error) {
    return failed(reasonOf(error));
  }
}

async function revisionOnDisk(path: string): Promise<string | null> {
  try {
    return revisionOf(await readFile(path));
  } catch (error) {
    if (isMissing(error)) return null;
    throw error;
  }
}
