import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { baselineOf } from '@latchwork/core/model/baseline';
import type { Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { projectOfText } from '../../services/check-project';
import { bundledPlaces } from '../../services/places';
import { readProjectFile, saveProjectFile } from '../../services/project-file';
import { type MadeAnswer, makeRelease, packageStem } from '../../services/release';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN, FOUND, type Io } from '../io';
import { dayOf, dayOption } from './shared/day-option';
import { readCatalogues } from './shared/read-catalogues';

/** Releases a draft and makes its package; of a released revision the package again, to the byte. */
export const release: CliCommand = {
  name: 'release',
  summary: 'Release the current revision and make its package: all documents, hashes, one baseline.',
  describe: (command) =>
    void command
      .argument('<file>', 'project (.latchwork); a draft is rewritten as released once the package stands')
      .requiredOption('--out <folder>', 'folder that the package goes into, as a folder and as a zip')
      .addOption(dayOption())
      .option('--approved-by <name>', 'who approves, for the title block of a draft')
      .option(
        '--catalogue <files...>',
        'catalogues to hold the records of the project against (JSON or CSV)',
      ),
  async run([path], options, io) {
    const stop = (reason: string): typeof COULD_NOT_RUN => {
      io.err(`${reason}\n`);
      return COULD_NOT_RUN;
    };
    const file = path as string;
    const read = await readProjectFile(file);
    if (!read.ok) return stop(`${file}: ${read.problem}`);
    const project = projectOfText(read.value.text);
    if (!project.ok) return stop(`${file}: ${project.problem}`);
    const catalogues = await readCatalogues((options['catalogue'] as string[] | undefined) ?? []);
    if (catalogues.problems.length > 0) return stop(catalogues.problems.join('\n'));
    const released = releasedProject(project.value, options, io);
    if (!released.ok) return stop(`${file}: ${released.problem}`);
    const out = options['out'] as string;
    const { fontsFolder } = bundledPlaces(io.root);
    const made = await makeRelease(released.value, out, { fontsFolder, catalogue: catalogues.parts });
    if (made.status === 'blocked') {
      io.out(blockedText(made.findings));
      return FOUND;
    }
    if (made.status !== 'made') return stop(made.status === 'failed' ? made.reason : made.status);
    if (released.value !== project.value) {
      const saved = await saveProjectFile(file, serialiseProject(released.value), read.value.revision);
      if (saved.status !== 'saved') {
        await takeBack(made, out, released.value);
        const why = saved.status === 'failed' ? saved.reason : 'The file was changed meanwhile.';
        return stop(`${file}: ${why} Nothing was released.`);
      }
    }
    io.out(madeText(released.value, made));
    io.err(`${AID_NOT_AUTHORITY}\n`);
    return CLEAN;
  },
};

/** The project released on the day asked for; one that is released already as it is. */
function releasedProject(
  project: Project,
  options: Record<string, unknown>,
  io: Io,
): Result<Project, string> {
  const current = project.revisions.at(-1);
  const approvedBy = options['approvedBy'] as string | undefined;
  if (current?.status === 'released') {
    const day = options['date'];
    if (day !== undefined && day !== current.date)
      return problem(
        `Revision ${current.revision} was released on ${current.date ?? 'an unknown day'}, and its package is judged on that day: leave --date out.`,
      );
    return approvedBy === undefined
      ? ok(project)
      : problem(`Revision ${current.revision} is released already: --approved-by comes too late.`);
  }
  const args = { date: dayOf(options, io), ...(approvedBy ? { approvalPerson: approvedBy } : {}) };
  const context = {
    newId: () => {
      throw new Error('A release makes no objects');
    },
    catalogue: [],
  };
  const done = dispatch(startHistory(project), { id: 'project.release', args }, context);
  return done.ok ? ok(done.value.project) : problem(done.problem.reason);
}

/** Without the released file there was no release: a package of this run is taken away again. */
async function takeBack(
  made: Extract<MadeAnswer, { status: 'made' }>,
  out: string,
  project: Project,
): Promise<void> {
  if (made.stoodAlready) return;
  const stem = packageStem(project);
  for (const name of [stem, `${stem}.zip`]) await rm(join(out, name), { recursive: true, force: true });
}

const blockedText = (findings: readonly string[]): string =>
  [
    `Not released: ${findings.length} critical ${findings.length === 1 ? 'finding is' : 'findings are'} open. Mend them, or decide on record.`,
    ...findings.map((f) => `  ${f}`),
    '',
  ].join('\n');

function madeText(project: Project, made: Extract<MadeAnswer, { status: 'made' }>): string {
  const revision = project.revisions.at(-1)?.revision ?? '';
  const stem = packageStem(project);
  return [
    `Revision ${revision} of ${project.titleBlock.title}, baseline ${baselineOf(project)}.`,
    made.stoodAlready
      ? `${join(made.place, stem)} and its zip stand there already, to the byte.`
      : `${made.files.length - 1} files in ${join(made.place, stem)}, and as ${stem}.zip.`,
    ...made.leftOut.map((l) => `  left out: ${l.what}: ${l.reason}`),
    '',
  ].join('\n');
}
