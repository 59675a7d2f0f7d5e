import { readFile, stat } from 'node:fs/promises';
import { type OnDiskAnswer, type SaveAnswer } from '@latchwork/core/bridge/answers';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { writeAtomically } from './atomic-write';
import { failed, isMissing, reasonOf } from './reason';
import { revisionOf } from './revision';

export const PROJECT_ENDING = '.latchwork';

/** Far above any real harness; below what would exhaust the memory. */
export const MAX_PROJECT_BYTES = 256 * 1024 * 1024;

/** Text and revision of a project file, or a reason. What the text means is not asked here. */
export async function readProjectFile(
  path: string,
): Promise<Result<{ text: string; revision: string }, string>> {
  try {
    const { size } = await stat(path);
    if (size > MAX_PROJECT_BYTES) return problem('The file is too large to be a project.');
    const bytes = await readFile(path);
    const text = utf8(bytes);
    return text === null ? problem('The file is not UTF-8 text.') : ok({ text, revision: revisionOf(bytes) });
  } catch (error) {
    return problem(reasonOf(error));
  }
}

/**
 * Writes the text unless the file has changed since `revision`; null writes in any case.
 * A file that has vanished is written again: nothing of anyone's is lost by that.
 */
export async function saveProjectFile(
  path: string,
  text: string,
  revision: string | null,
): Promise<SaveAnswer> {
  const bytes = Buffer.from(text, 'utf8');
  try {
    if (revision !== null) {
      const found = await revisionOnDisk(path);
      if (found !== null && found !== revision) return { status: 'changed-on-disk', revision: found };
    }
    await writeAtomically(path, bytes);
    return { status: 'saved', revision: revisionOf(bytes) };
  } catch (error) {
    return failed(reasonOf(error));
  }
}

export async function compareOnDisk(path: string, revision: string): Promise<OnDiskAnswer> {
  try {
    const found = await revisionOnDisk(path);
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

function utf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
