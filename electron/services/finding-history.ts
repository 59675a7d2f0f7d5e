import { mkdir, readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { type DoneAnswer } from '@latchwork/core/bridge/answers';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { type RememberedFinding, RememberedFindings } from '@latchwork/core/model/remembered-finding';
import { z } from 'zod';
import { JsonFile } from './json-file';
import { failed, reasonOf } from './reason';

/** Projects that are remembered; of more, those that were written longest ago are forgotten. */
const PROJECTS = 100;

/** Since when findings are there: ids and moments, one file per project in the program's own folder. */
export class FindingHistory {
  readonly #folder: string;

  constructor(
    dataFolder: string,
    readonly most: number = PROJECTS,
  ) {
    this.#folder = join(dataFolder, 'finding-history');
  }

  /** Null where the project was never seen, or what is there cannot be read. */
  read(project: string): Promise<readonly RememberedFinding[] | null> {
    return this.#fileOf(project).read();
  }

  async write(project: string, findings: readonly RememberedFinding[]): Promise<DoneAnswer> {
    try {
      await mkdir(this.#folder, { recursive: true, mode: 0o700 });
      await this.#fileOf(project).update(() => [...findings]);
      await this.#forgetOldest();
      return { status: 'done' };
    } catch (error) {
      return failed(reasonOf(error));
    }
  }

  async #forgetOldest(): Promise<void> {
    const names = (await readdir(this.#folder)).filter((name) => name.endsWith('.json'));
    if (names.length <= this.most) return;
    const aged = await Promise.all(
      names.map(async (name) => ({ name, written: (await stat(join(this.#folder, name))).mtimeMs })),
    );
    aged.sort((a, b) => b.written - a.written || (a.name < b.name ? -1 : 1));
    for (const { name } of aged.slice(this.most)) await rm(join(this.#folder, name), { force: true });
  }

  #fileOf(project: string) {
    return new JsonFile(
      join(this.#folder, `${z.uuid().parse(project)}.json`),
      RememberedFindings.nullable(),
      null,
    );
  }
}

type Channels = Extract<keyof Handlers, `history:${string}`>;

export const findingHistoryHandlers = (history: FindingHistory): Pick<Handlers, Channels> => ({
  'history:read': async ({ project }) => {
    const findings = await history.read(project);
    return { findings: findings && [...findings] };
  },
  'history:write': ({ project, findings }) => history.write(project, findings),
});
