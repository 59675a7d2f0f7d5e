import { readFile, stat } from 'node:fs/promises';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { reasonOf } from '../../../services/reason';

/** Far above any real table. */
const MAX_BYTES = 64 * 1024 * 1024;

/** The text of a table or catalogue, or a reason that names the file. */
export async function readText(path: string): Promise<Result<string, string>> {
  try {
    const { size } = await stat(path);
    if (size > MAX_BYTES) return problem(`${path}: The file is too large.`);
    return ok(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await readFile(path)));
  } catch (error) {
    const notText = error instanceof TypeError;
    return problem(`${path}: ${notText ? 'The file is not UTF-8 text.' : reasonOf(error)}`);
  }
}
