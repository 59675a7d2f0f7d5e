import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** The catalogues that come with the program, by name. They are part of it: one that cannot be read is our bug. */
export async function readCatalogues(folder: string): Promise<{ name: string; text: string }[]> {
  const names = await readdir(folder).catch(() => []);
  return Promise.all(
    names
      .filter((name) => name.endsWith('.json'))
      .sort()
      .map(async (name) => ({ name, text: await readFile(join(folder, name), 'utf8') })),
  );
}
