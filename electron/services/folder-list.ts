import { readdir, stat } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { type FolderAnswer } from '@latchwork/core/bridge/answers';
import { failed, isMissing, reasonOf } from './reason';

/** The files of a folder that carry one of the endings, by name. A folder that is not there yet is empty. */
export async function listFolder(
  folder: string,
  place: string,
  endings: readonly string[],
): Promise<FolderAnswer> {
  try {
    const entries = await readdir(folder, { withFileTypes: true });
    const names = entries
      .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
      .map((entry) => entry.name)
      .filter((name) => endings.includes(extname(name).toLowerCase()))
      .sort();
    const files = await Promise.all(
      names.map(async (name) => {
        const { size, mtime } = await stat(join(folder, name));
        return { name, bytes: size, modified: mtime.toISOString() };
      }),
    );
    return { status: 'listed', place, files };
  } catch (error) {
    return isMissing(error) ? { status: 'listed', place, files: [] } : failed(reasonOf(error));
  }
}
