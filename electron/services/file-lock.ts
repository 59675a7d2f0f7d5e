import { open, readFile, rm, stat, utimes } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { z } from 'zod';
import { isMissing, isTaken } from './reason';

/** Who works on a file: a window of a program of a user on a machine. */
export const Holder = z.strictObject({
  window: z.uuid(),
  user: z.string(),
  host: z.string(),
  processId: z.int(),
  since: z.iso.datetime(),
});
export type Holder = z.infer<typeof Holder>;

/** A holder that was not heard of for so long is gone: its machine was switched off, its network is away. */
export const GONE_AFTER_MS = 90_000;

export interface LockWorld {
  readonly user: string;
  readonly host: string;
  readonly processId: number;
  readonly now: () => Date;
  readonly isAlive: (processId: number) => boolean;
}

/**
 * Says who works on a project, by a small file beside it that everyone sees who can see the project. It keeps nobody from
 * writing: what guards the work is the comparison of revisions at each save.
 */
export class FileLocks {
  constructor(readonly world: LockWorld) {}

  /** Null when the file is held by this window now; else who holds it. Asking again renews the hold. Throws the system's error. */
  async hold(path: string, window: string, takeOver = false): Promise<Holder | null> {
    const mine: Holder = {
      window,
      user: this.world.user,
      host: this.world.host,
      processId: this.world.processId,
      since: this.world.now().toISOString(),
    };
    for (;;) {
      if (await create(lockOf(path), mine)) return null;
      const found = await this.#find(path);
      if (found === 'none') continue;
      if (found !== 'gone' && found.window === window && this.#isHere(found)) {
        await utimes(lockOf(path), this.world.now(), this.world.now());
        return null;
      }
      if (found !== 'gone' && !takeOver) return found;
      await rm(lockOf(path), { force: true });
    }
  }

  /** Gives the file free, if this window holds it. */
  async letGo(path: string, window: string): Promise<void> {
    const found = await this.#find(path).catch(() => 'none' as const);
    if (typeof found === 'object' && found.window === window) await rm(lockOf(path), { force: true });
  }

  /** `gone`: a lock that nobody keeps up any more, or that is not readable. */
  async #find(path: string): Promise<Holder | 'gone' | 'none'> {
    try {
      const [text, { mtimeMs }] = await Promise.all([readFile(lockOf(path), 'utf8'), stat(lockOf(path))]);
      const silent = this.world.now().getTime() - mtimeMs > GONE_AFTER_MS;
      const holder = parsed(text);
      if (!holder) return silent ? 'gone' : UNKNOWN;
      const died = this.#isHere(holder) && !this.world.isAlive(holder.processId);
      return silent || died ? 'gone' : holder;
    } catch (error) {
      if (isMissing(error)) return 'none';
      throw error;
    }
  }

  #isHere(holder: Holder): boolean {
    return holder.host === this.world.host && holder.user === this.world.user;
  }
}

/** A lock that is just being written, or of a later version. */
const UNKNOWN: Holder = {
  window: '00000000-0000-0000-0000-000000000000',
  user: 'someone',
  host: 'a machine that is not known',
  processId: 0,
  since: '1970-01-01T00:00:00.000Z',
};

export const lockOf = (path: string): string => join(dirname(path), `.${basename(path)}.lock`);

async function create(path: string, holder: Holder): Promise<boolean> {
  try {
    const handle = await open(path, 'wx');
    await handle.writeFile(JSON.stringify(holder)).finally(() => handle.close());
    return true;
  } catch (error) {
    if (isTaken(error)) return false;
    throw error;
  }
}

function parsed(text: string): Holder | null {
  try {
    return Holder.parse(JSON.parse(text));
  } catch {
    return null;
  }
}

/** Whether a process of this machine runs; one of another user counts. */
export function isProcessAlive(processId: number): boolean {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
