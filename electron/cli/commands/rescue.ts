import { randomUUID } from 'node:crypto';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { rescueProject } from '@latchwork/core/model/rescue/rescue-project';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { readProjectBytes } from '../../services/project-file';
import { writeOutput } from './shared/write-output';

/** Writes what can be read of a damaged project to a new file; the damaged one stays as it is. */
export const rescue: CliCommand = {
  name: 'rescue',
  summary: 'Write what can be read of a damaged project to a new file.',
  describe: (command) =>
    void command
      .argument('<file>', 'damaged project; it is not changed')
      .requiredOption('--out <path>', 'new project to write'),
  async run([file], options, io) {
    const stop = (reason: string): typeof COULD_NOT_RUN => {
      io.err(`${reason}\n`);
      return COULD_NOT_RUN;
    };
    const bytes = await readProjectBytes(file as string);
    if (!bytes.ok) return stop(`${file}: ${bytes.problem}`);
    // Bytes that are no text become signs that no line of ours has: the lines around them are read.
    const text = new TextDecoder('utf-8').decode(bytes.value);
    const rescued = rescueProject(text, { id: randomUUID(), revisionId: randomUUID() });
    if (!rescued.ok) return stop(`${file}: ${rescued.problem}`);
    const { project, lost } = rescued.value;
    const out = options['out'] as string;
    const refusal = await writeOutput(out, Buffer.from(serialiseProject(project)), [file as string]);
    if (refusal !== null) return stop(refusal);
    io.out(lost.map((line) => `lost: ${line}\n`).join(''));
    io.err(
      lost.length === 0
        ? `Everything could be read; written to ${out}.\n`
        : `Written to ${out} without what is listed as lost. Look it through before you use it.\n`,
    );
    return CLEAN;
  },
};
