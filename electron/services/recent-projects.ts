import { createHash } from 'node:crypto';
import { basename, join } from 'node:path';
import { z } from 'zod';
import { JsonFile } from './json-file';

const KEPT = 12;

const RecentFile = z.strictObject({
  recent: z.array(z.strictObject({ path: z.string(), opened: z.iso.datetime() })),
});

/** The projects opened or saved last, newest first. The window sees an id and a name, not the path. */
export class RecentProjects {
  readonly #file: JsonFile<typeof RecentFile>;

  constructor(
    dataFolder: string,
    readonly now: () => Date,
  ) {
    this.#file = new JsonFile(join(dataFolder, 'recent.json'), RecentFile, { recent: [] });
  }

  async list(): Promise<{ id: string; name: string; opened: string }[]> {
    const { recent } = await this.#file.read();
    return recent.map(({ path, opened }) => ({ id: idOf(path), name: basename(path), opened }));
  }

  async pathOf(id: string): Promise<string | null> {
    const { recent } = await this.#file.read();
    return recent.find(({ path }) => idOf(path) === id)?.path ?? null;
  }

  /** A comfort: when it cannot be written, opening and saving go on. */
  async remember(path: string): Promise<void> {
    const entry = { path, opened: this.now().toISOString() };
    await this.#file
      .update(({ recent }) => ({ recent: [entry, ...recent.filter((r) => r.path !== path)].slice(0, KEPT) }))
      .catch(() => undefined);
  }
}

const idOf = (path: string): string => createHash('sha256').update(path).digest('hex').slice(0, 16);
