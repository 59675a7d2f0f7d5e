// Edits, saves and backs up as fast as it can, until it is killed. Says each step before and after it, so that what was
// done is known although it cannot say goodbye.
import { writeSync } from 'node:fs';
import { Backups } from '../../../electron/services/backups';
import { saveProjectFile } from '../../../electron/services/project-file';

const [path, dataFolder, document, from, size, backupEveryMs] = process.argv.slice(2) as [
  string, string, string, string, string, string,
]; // prettier-ignore

const say = (what: string, edit: number): void => void writeSync(1, `${what} ${edit} ${Date.now()}\n`);
const textOf = (edit: number): string =>
  JSON.stringify({ edit, filler: 'x'.repeat(Number(size)), end: edit });

let edit = Number(from);
const editing = setInterval(() => say('edit', ++edit), 2);

async function backUp(): Promise<void> {
  const backups = new Backups(dataFolder, () => new Date());
  for (;;) {
    const now = edit;
    await backups.write({ document, name: 'lamp', path, revision: null, text: textOf(now) });
    say('backup', now);
    await new Promise((resolve) => setTimeout(resolve, Number(backupEveryMs)));
  }
}

async function save(): Promise<void> {
  let revision: string | null = null;
  for (;;) {
    const now = edit;
    say('saving', now);
    const answer = await saveProjectFile(path, textOf(now), revision);
    if (answer.status !== 'saved') throw new Error(JSON.stringify(answer));
    ({ revision } = answer);
    say('saved', now);
    await new Promise((resolve) => setTimeout(resolve, 1));
  }
}

void Promise.all([backUp(), save()]).finally(() => clearInterval(editing));
