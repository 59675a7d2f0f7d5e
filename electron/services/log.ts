import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';

export type Facts = Readonly<Record<string, string | number | boolean>>;

/** What happened, in words of the program's own: never a title, a designator, a file name or a path. */
export interface Log {
  write(event: string, facts?: Facts): void;
  /** The last lines of this run, oldest first. */
  recent(): readonly string[];
}

const KEPT_LINES = 200;
const FILE_BYTES = 256 * 1024;
const OLDER_FILES = 2;

/**
 * A log in the program's data folder, in files of bounded size and number. Each line is on its way to the disk before the
 * next thing happens, so that the last one before a crash is there. Where it cannot be written, the program works on
 * without one.
 */
export class FileLog implements Log {
  readonly #lines: string[] = [];
  readonly #file: string;

  constructor(
    dataFolder: string,
    readonly now: () => Date,
  ) {
    const folder = join(dataFolder, 'logs');
    this.#file = join(folder, 'latchwork.log');
    quietly(() => mkdirSync(folder, { recursive: true, mode: 0o700 }));
  }

  write(event: string, facts: Facts = {}): void {
    const line = `${this.now().toISOString()} ${textOf(event, facts)}`;
    this.#lines.push(line);
    if (this.#lines.length > KEPT_LINES) this.#lines.shift();
    quietly(() => {
      rotate(this.#file);
      appendFileSync(this.#file, `${line}\n`, { mode: 0o600 });
    });
  }

  recent(): readonly string[] {
    return [...this.#lines];
  }
}

/** latchwork.log becomes latchwork.log.1, that one .2, and the oldest goes. */
function rotate(file: string): void {
  if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) < FILE_BYTES) return;
  for (let n = OLDER_FILES; n > 0; n--)
    quietly(() => renameSync(n === 1 ? file : `${file}.${n - 1}`, `${file}.${n}`));
}

/** A log that cannot be written must not stop anything. */
function quietly(work: () => unknown): void {
  try {
    work();
  } catch {
    // Nobody could be told.
  }
}

const textOf = (event: string, facts: Facts): string =>
  [event, ...Object.entries(facts).map(([k, v]) => `${k}=${plain(v)}`)].join(' ');

/** Keeps lines in memory only. */
export class MemoryLog implements Log {
  readonly lines: string[] = [];

  write(event: string, facts: Facts = {}): void {
    this.lines.push(textOf(event, facts));
  }

  recent(): readonly string[] {
    return this.lines;
  }
}

/** A number or one plain word; whatever could be content becomes dots. */
const plain = (value: string | number | boolean): string => {
  const text = String(value);
  return typeof value !== 'string' || /^[\w.:@<>,-]{1,200}$/.test(text) ? text : '…';
};

/** An error as its kind and the places in the program that it came through. Its message may quote a project. */
export function errorFacts(error: unknown): Facts {
  const { name, stack } = error instanceof Error ? error : { name: typeof error, stack: '' };
  const code = error instanceof Error && 'code' in error ? String(error.code) : 'none';
  return { name, code, at: framesOf(stack ?? '').join(',') || 'unknown' };
}

/** "save@main.cjs:120" for each line of a stack; folders are left out. */
export function framesOf(stack: string): string[] {
  return stack
    .split('\n')
    .flatMap((line) => {
      const found = /at (?:async )?(?:([\w.<>]+) )?.*?([\w.-]+):(\d+):\d+\)?$/.exec(line.trim());
      return found ? [`${found[1] ?? '<none>'}@${found[2]}:${found[3]}`] : [];
    })
    .slice(0, 6);
}
