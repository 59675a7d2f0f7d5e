import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { createStream, type RotatingFileStream } from 'rotating-file-stream';

export type Facts = Readonly<Record<string, string | number | boolean>>;

/** What happened, in words of the program's own: never a title, a designator, a file name or a path. */
export interface Log {
  write(event: string, facts?: Facts): void;
  /** The last lines of this run, oldest first. */
  recent(): readonly string[];
}

const KEPT_LINES = 200;
const ROTATION = { size: '256K', maxFiles: 3 } as const;

/**
 * A log in the program's data folder, in files of bounded size and number. Where it cannot be written, the program works
 * on without one.
 */
export class FileLog implements Log {
  readonly #lines: string[] = [];
  readonly #stream: RotatingFileStream | null;

  constructor(
    dataFolder: string,
    readonly now: () => Date,
  ) {
    this.#stream = openStream(join(dataFolder, 'logs'));
  }

  write(event: string, facts: Facts = {}): void {
    const line = [this.now().toISOString(), event, ...Object.entries(facts).map(([k, v]) => `${k}=${plain(v)}`)].join(' '); // prettier-ignore
    this.#lines.push(line);
    if (this.#lines.length > KEPT_LINES) this.#lines.shift();
    this.#stream?.write(`${line}\n`);
  }

  recent(): readonly string[] {
    return [...this.#lines];
  }

  close(): Promise<void> {
    return new Promise((resolve) => (this.#stream ? this.#stream.end(resolve) : resolve()));
  }
}

/** Keeps lines in memory only. */
export class MemoryLog implements Log {
  readonly lines: string[] = [];

  write(event: string, facts: Facts = {}): void {
    this.lines.push([event, ...Object.entries(facts).map(([k, v]) => `${k}=${plain(v)}`)].join(' '));
  }

  recent(): readonly string[] {
    return this.lines;
  }
}

function openStream(folder: string): RotatingFileStream | null {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const stream = createStream('latchwork.log', { path: folder, ...ROTATION });
    // A full disk must not end the program.
    stream.on('error', () => undefined);
    return stream;
  } catch {
    return null;
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
