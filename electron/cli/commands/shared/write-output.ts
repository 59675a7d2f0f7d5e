import { realpath } from 'node:fs/promises';
import { resolve } from 'node:path';
import { writeAtomically } from '../../../services/atomic-write';
import { reasonOf } from '../../../services/reason';

/**
 * Writes the bytes as a whole or not at all; a file of that name is replaced, unless it is one of the inputs. The
 * answer is a reason, or null when all went well.
 */
export async function writeOutput(
  path: string,
  bytes: Uint8Array,
  inputs: readonly string[],
): Promise<string | null> {
  const target = await placeOf(path);
  for (const input of inputs)
    if ((await placeOf(input)) === target) return `${path}: This is one of the files that were read.`;
  try {
    await writeAtomically(path, bytes);
    return null;
  } catch (error) {
    return `${path}: ${reasonOf(error)}`;
  }
}

const placeOf = (path: string): Promise<string> => realpath(path).catch(() => resolve(path));
