import { mkdir, readFile, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type DoneAnswer } from '@latchwork/core/bridge/answers';
import { z } from 'zod';
import { writeAtomically } from './atomic-write';
import { failed, isMissing, reasonOf } from './reason';

const Backup = z.strictObject({
  document: z.uuid(),
  name: z.string(),
  written: z.iso.datetime(),
  path: z.string().nullable(),
  revision: z.string().nullable(),
  text: z.string(),
});
export type Backup = z.infer<typeof Backup>;

/** Unsaved work, one file per open document, in the program's own folder. */
export class Backups {
  readonly #folder: string;

  constructor(
    dataFolder: string,
    readonly now: () => Date,
  ) {
    this.#folder = join(dataFolder, 'backups');
  }

  async write(backup: Omit<Backup, 'written'>): Promise<DoneAnswer> {
    try {
      await mkdir(this.#folder, { recursive: true, mode: 0o700 });
      const whole: Backup = { ...backup, written: this.now().toISOString() };
      await writeAtomically(this.#fileOf(backup.document), Buffer.from(JSON.stringify(whole)));
      return { status: 'done' };
    } catch (error) {
      return failed(reasonOf(error));
    }
  }

  /** Newest first. A file that is no backup is left alone and not listed. */
  async list(): Promise<Backup[]> {
    const names = await readdir(this.#folder).catch(() => []);
    const found = await Promise.all(
      names.filter((name) => name.endsWith('.json')).map((name) => this.read(name.slice(0, -'.json'.length))),
    );
    return found.filter((backup) => backup !== null).sort((a, b) => (a.written < b.written ? 1 : -1));
  }

  async read(document: string): Promise<Backup | null> {
    try {
      return Backup.parse(JSON.parse(await readFile(this.#fileOf(document), 'utf8')));
    } catch {
      return null;
    }
  }

  async discard(document: string): Promise<DoneAnswer> {
    try {
      await rm(this.#fileOf(document));
      return { status: 'done' };
    } catch (error) {
      return isMissing(error) ? { status: 'done' } : failed(reasonOf(error));
    }
  }

  #fileOf(document: string): string {
    return join(this.#folder, `${z.uuid().parse(document)}.json`);
  }
}
