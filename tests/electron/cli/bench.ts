import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serialiseProject } from '@latchwork/core/model/serialise';
import type { Project } from '@latchwork/core/model/project';
import type { ExitCode } from '../../../electron/cli/io';
import { run } from '../../../electron/cli/run';

/** The day on which these tests take place. */
export const TODAY = '2026-03-01';

export interface Ran {
  readonly code: ExitCode;
  readonly out: string;
  readonly err: string;
}

/** A folder of its own for files, and the command line with its output caught. */
export async function bench() {
  const folder = await mkdtemp(join(tmpdir(), 'latchwork-cli-'));
  const path = (name: string): string => join(folder, name);
  const write = async (name: string, content: string | Uint8Array): Promise<string> => {
    await writeFile(path(name), content);
    return path(name);
  };
  return {
    path,
    write,
    save: (name: string, project: Project): Promise<string> => write(name, serialiseProject(project)),
    read: (name: string): Promise<string> => readFile(path(name), 'utf8'),
    bytes: (name: string): Promise<Buffer> => readFile(path(name)),
    files: async (): Promise<string[]> => (await readdir(folder)).sort(),
    async run(...argv: string[]): Promise<Ran> {
      let out = '';
      let err = '';
      const code = await run(argv, {
        root: process.cwd(),
        today: () => TODAY,
        out: (t) => void (out += t),
        err: (t) => void (err += t),
      });
      return { code, out, err };
    },
    remove: (): Promise<void> => rm(folder, { recursive: true, force: true }),
  };
}

export type Bench = Awaited<ReturnType<typeof bench>>;
