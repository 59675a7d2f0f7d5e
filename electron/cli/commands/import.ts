import { basename, extname } from 'node:path';
import { importHarness } from '@latchwork/core/import/import-harness';
import { importProblemText } from '@latchwork/core/import/import-problem';
import { type Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { checkProject } from '../../services/check-project';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { readCatalogues } from './shared/read-catalogues';
import { readText } from './shared/read-text';
import { writeOutput } from './shared/write-output';

/** A project from tables. One bad row, and nothing is written; every problem of every file is told at once. */
export const importCommand: CliCommand = {
  name: 'import',
  summary: 'Make a project from a from-to table, a connectors table and catalogues.',
  describe: (command) =>
    void command
      .requiredOption('--from-to <csv>', 'one wire a row')
      .option('--connectors <csv>', 'one placed housing or header a row')
      .requiredOption('--catalogue <files...>', 'catalogues to choose parts from (JSON or CSV)')
      .requiredOption('--out <file>', 'project to write (.latchwork); a file of that name is replaced'),
  async run(_args, options, io) {
    const fromToPath = options['fromTo'] as string;
    const connectorsPath = options['connectors'] as string | undefined;
    const cataloguePaths = options['catalogue'] as string[];
    const out = options['out'] as string;

    const catalogues = await readCatalogues(cataloguePaths);
    const problems: string[] = [...catalogues.problems];
    const table = async (path: string): Promise<{ file: string; text: string }> => {
      const text = await readText(path);
      if (!text.ok) problems.push(text.problem);
      return { file: basename(path), text: text.ok ? text.value : '' };
    };
    const fromTo = await table(fromToPath);
    const connectors = connectorsPath === undefined ? undefined : await table(connectorsPath);
    const stop = (reasons: readonly string[]): typeof COULD_NOT_RUN => {
      io.err(reasons.map((r) => `${r}\n`).join('') + 'Nothing was written.\n');
      return COULD_NOT_RUN;
    };
    // Without all parts the rows cannot be judged: they would be blamed for what the catalogue lacks.
    if (problems.length) return stop(problems);

    const title = basename(out, extname(out));
    const project = importHarness({ fromTo, connectors, catalogue: catalogues.parts, title });
    if (!project.ok) return stop(project.problem.map(importProblemText));
    const bytes = Buffer.from(serialiseProject(project.value), 'utf8');
    const inputs = [fromToPath, ...(connectorsPath === undefined ? [] : [connectorsPath]), ...cataloguePaths];
    const refusal = await writeOutput(out, bytes, inputs);
    if (refusal !== null) return stop([refusal]);
    for (const remark of catalogues.remarks) io.err(`${remark}\n`);
    io.err(summary(project.value, out));
    return CLEAN;
  },
};

function summary(project: Project, out: string): string {
  const { connectors, wires, contacts, splices } = project;
  const { findings } = checkProject(project);
  return (
    `${connectors.length} connectors, ${wires.length} wires, ${contacts.length} contacts, ${splices.length} splices written to ${out}.\n` +
    `${findings.length === 1 ? '1 finding' : `${findings.length} findings`}: run "latchwork check ${out}".\n`
  );
}
