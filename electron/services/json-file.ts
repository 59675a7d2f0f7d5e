import { mkdir, readFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { type z } from 'zod';
import { writeAtomically } from './atomic-write';

/**
 * A small file of the program's own. When it is missing or does not parse, the fallback stands in: it holds comforts
 * (recent files, panel sizes), never the user's work.
 */
export class JsonFile<S extends z.ZodType> {
  #queue: Promise<unknown> = Promise.resolve();

  constructor(
    readonly path: string,
    readonly schema: S,
    readonly fallback: z.infer<S>,
  ) {}

  async read(): Promise<z.infer<S>> {
    try {
      return this.schema.parse(JSON.parse(await readFile(this.path, 'utf8')));
    } catch {
      return this.fallback;
    }
  }

  /** Reads, changes and writes, one caller after the other. */
  update(change: (value: z.infer<S>) => z.infer<S>): Promise<void> {
    const next = this.#queue.then(async () => {
      const value = change(await this.read());
      await mkdir(dirname(this.path), { recursive: true });
      await writeAtomically(this.path, Buffer.from(`${JSON.stringify(value, null, 2)}\n`));
    });
    this.#queue = next.catch(() => undefined);
    return next;
  }
}
